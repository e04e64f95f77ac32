package org.siltbench.station.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

final class JsonReading {

  private static final int MAX_CHARACTERS = 8 << 20;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
          .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(40)
                  .maxDocumentLength(MAX_CHARACTERS)
                  .maxStringLength(MAX_CHARACTERS)
                  .maxNameLength(1024)
                  .maxNumberLength(100)
                  .build())
          .build();

  private JsonReading() {}

  static @Nullable Object read(String text) throws NotJson {
    if (text.length() > MAX_CHARACTERS) {
      throw new NotJson("the text is longer than " + MAX_CHARACTERS + " characters", null);
    }
    try (JsonParser parser = FACTORY.createParser(text)) {
      Object value = value(parser, parser.nextToken());
      if (parser.nextToken() != null) {
        throw new NotJson("there is more text after the value", null);
      }
      return value;
    } catch (IOException e) {
      throw new NotJson(reason(e), e);
    }
  }

  private static String reason(IOException e) {
    String message = String.valueOf(e.getMessage());
    int end = message.indexOf('\n');
    return end < 0 ? message : message.substring(0, end);
  }

  private static @Nullable Object value(JsonParser parser, @Nullable JsonToken token)
      throws IOException, NotJson {
    if (token == null) {
      throw new NotJson("the text is empty", null);
    }
    return switch (token) {
      case START_OBJECT -> object(parser);
      case START_ARRAY -> list(parser);
      case VALUE_STRING -> parser.getText();
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(parser, token);
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      case VALUE_NULL -> null;
      default -> throw new NotJson("a value was expected, not " + token, null);
    };
  }

  private static Object number(JsonParser parser, JsonToken token) throws IOException, NotJson {
    if (token == JsonToken.VALUE_NUMBER_INT
        && parser.getNumberType() != JsonParser.NumberType.BIG_INTEGER) {
      return parser.getLongValue();
    }
    BigDecimal value = parser.getDecimalValue();
    if (Math.abs((long) value.scale()) > 400) {
      throw new NotJson("a number is out of every useful range", null);
    }
    return value;
  }

  private static Map<String, @Nullable Object> object(JsonParser parser)
      throws IOException, NotJson {
    Map<String, @Nullable Object> object = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String name = parser.currentName();
      object.put(name, value(parser, parser.nextToken()));
    }
    return object;
  }

  private static List<@Nullable Object> list(JsonParser parser) throws IOException, NotJson {
    List<@Nullable Object> list = new ArrayList<>();
    JsonToken token = parser.nextToken();
    while (token != JsonToken.END_ARRAY) {
      list.add(value(parser, token));
      token = parser.nextToken();
    }
    return list;
  }
}
