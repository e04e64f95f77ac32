package org.siltbench.station.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes a tree of maps, lists, strings, numbers, booleans and null as one line of JSON. */
final class Json {

  private static final JsonFactory FACTORY = new JsonFactory();

  private Json() {}

  static String line(@Nullable Object tree) {
    StringWriter text = new StringWriter();
    try (JsonGenerator to = FACTORY.createGenerator(text)) {
      write(to, tree);
    } catch (IOException e) {
      throw new UncheckedIOException("a string writer does not fail", e);
    }
    return text.toString();
  }

  private static void write(JsonGenerator to, @Nullable Object value) throws IOException {
    if (value == null) {
      to.writeNull();
    } else if (value instanceof Map<?, ?> map) {
      writeMap(to, map);
    } else if (value instanceof Iterable<?> list) {
      writeList(to, list);
    } else if (value instanceof Boolean bool) {
      to.writeBoolean(bool);
    } else if (value instanceof Number number) {
      writeNumber(to, number);
    } else {
      to.writeString(value.toString());
    }
  }

  private static void writeMap(JsonGenerator to, Map<?, ?> map) throws IOException {
    to.writeStartObject();
    for (Map.Entry<?, ?> field : map.entrySet()) {
      to.writeFieldName(String.valueOf(field.getKey()));
      write(to, field.getValue());
    }
    to.writeEndObject();
  }

  private static void writeList(JsonGenerator to, Iterable<?> list) throws IOException {
    to.writeStartArray();
    for (Object item : list) {
      write(to, item);
    }
    to.writeEndArray();
  }

  private static void writeNumber(JsonGenerator to, Number number) throws IOException {
    double value = number.doubleValue();
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      to.writeNull();
    } else {
      to.writeNumber(number.toString());
    }
  }
}
