package org.siltbench.station.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class JsonTest {

  @Test
  void whatIsWrittenReadsBackTheSame() throws NotJson {
    Map<String, Object> object = new LinkedHashMap<>();
    object.put("z", "µ \"quoted\" \\ \n\r\t\u0001 \u2028 \uD83D\uDE00 \uD800");
    object.put("a", Arrays.asList(1L, -5L, Long.MAX_VALUE, true, false, null, List.of(), Map.of()));
    object.put("d", new BigDecimal("0.1230"));
    String text = Json.write(object);
    assertEquals(object, Json.read(text));
    assertEquals(text, new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8));
    assertEquals(
        "{\"a\":1,\"b\":{\"c\":2,\"d\":3}}",
        Json.canonical(Json.read("{\"b\":{\"d\":3,\"c\":2},\"a\":1}")));
  }

  @Test
  void whatIsNotPlainJsonIsRefused() {
    for (String text :
        List.of(
            "",
            " ",
            "{\"a\":1,\"a\":2}",
            "{\"a\":1} x",
            "[1,]",
            "{a:1}",
            "01",
            "NaN",
            "1e99999",
            "'x'",
            "\"\u0000\"",
            "[".repeat(100) + "]".repeat(100),
            "9".repeat(200),
            "\"" + "x".repeat(9 << 20) + "\"")) {
      assertThrows(
          NotJson.class, () -> Json.read(text), text.substring(0, Math.min(20, text.length())));
    }
    assertThrows(NotJson.class, () -> Json.object("[]"));
    assertThrows(NotJson.class, () -> Json.object(new byte[] {'{', '"', (byte) 0xc3, '"', '}'}));
    assertThrows(IllegalArgumentException.class, () -> Json.write(0.1));
  }

  @Test
  void anyTextEitherReadsAndWritesBackOrIsRefused() {
    fuzz(20_000, 5);
  }

  @Test
  @Tag("long")
  void aMillionTextsEitherReadOrAreRefused() {
    fuzz(1_000_000, 6);
  }

  private static void fuzz(int count, long seed) {
    Random random = new Random(seed);
    String[] bits = {
      "{", "}", "[", "]", ":", ",", "\"", "\\", "\\u", "00e9", "1", "-", ".5", "e9", "true", "null",
      "\"a\"", "\"b\":", " ", "\n", "\u0000", "\uD800", "é", "1e", "{\"a\":", "[1", "]]"
    };
    List<String> read = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(12); n >= 0; n--) {
        text.append(bits[random.nextInt(bits.length)]);
      }
      try {
        Object value = Json.read(text.toString());
        assertEquals(value, Json.read(Json.write(value)), text.toString());
        read.add(text.toString());
      } catch (NotJson e) {
        assertEquals(false, e.getMessage().isEmpty());
      }
    }
    assertEquals(true, read.size() > count / 100);
  }
}
