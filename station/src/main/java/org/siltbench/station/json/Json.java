package org.siltbench.station.json;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * JSON values are {@code Map<String, Object>} (in text order), {@code List}, {@code String}, {@code
 * Long}, {@code BigDecimal} (what is no long), {@code Boolean} and null. Reading refuses duplicate
 * names, text after the value, more than 40 levels and more than 8 MiB.
 */
public final class Json {

  private Json() {}

  /** Reads one value. */
  public static @Nullable Object read(String text) throws NotJson {
    return JsonReading.read(text);
  }

  /** Reads one object. */
  public static Map<String, @Nullable Object> object(String text) throws NotJson {
    Object value = read(text);
    if (!(value instanceof Map<?, ?> map)) {
      throw new NotJson("an object in braces was expected", null);
    }
    Map<String, @Nullable Object> object = new LinkedHashMap<>();
    map.forEach((name, member) -> object.put((String) name, member));
    return object;
  }

  /** Reads one object from UTF-8; malformed UTF-8 is refused. */
  public static Map<String, @Nullable Object> object(byte[] utf8) throws NotJson {
    try {
      return object(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(utf8)).toString());
    } catch (CharacterCodingException e) {
      throw new NotJson("the text is not UTF-8", e);
    }
  }

  /** Writes a value in one line, members in the order of the map. */
  public static String write(@Nullable Object value) {
    return new JsonWriting(false).text(value);
  }

  /** The same, at the end of a text. */
  public static void write(@Nullable Object value, StringBuilder text) {
    new JsonWriting(false, text).value(value);
  }

  /** Writes a value in one line, members sorted by name at every level. */
  public static String canonical(@Nullable Object value) {
    return new JsonWriting(true).text(value);
  }
}
