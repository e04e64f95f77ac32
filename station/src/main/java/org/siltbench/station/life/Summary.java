package org.siltbench.station.life;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.SortedMap;
import java.util.TreeMap;

/** A small flat JSON object with its names in order and nothing empty in it. */
final class Summary {

  private static final JsonFactory JSON = new JsonFactory();

  private final SortedMap<String, Object> values = new TreeMap<>();

  Summary put(String name, Object value) {
    if (!value.equals("") && !value.equals(0) && !value.equals(false)) {
      values.put(name, value);
    }
    return this;
  }

  String json() {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(out)) {
      json.writeStartObject();
      for (var field : values.entrySet()) {
        write(json, field.getKey(), field.getValue());
      }
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("a StringWriter does not fail", e);
    }
    return out.toString();
  }

  private static void write(JsonGenerator json, String name, Object value) throws IOException {
    json.writeFieldName(name);
    if (value instanceof Integer whole) {
      json.writeNumber(whole);
    } else if (value instanceof Boolean flag) {
      json.writeBoolean(flag);
    } else {
      json.writeString(value.toString());
    }
  }
}
