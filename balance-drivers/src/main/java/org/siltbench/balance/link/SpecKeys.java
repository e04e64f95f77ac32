package org.siltbench.balance.link;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The keys after the question mark of a link text; each is taken once, what is left is refused. */
final class SpecKeys {

  private static final int MAX_KEY = 200;

  /** A character as three bytes of UTF-8, each as %XX. */
  private static final int LONGEST_CODE = 9;

  private static final int SHOWN = 60;

  private final Map<String, String> keys = new LinkedHashMap<>();

  static SpecKeys parse(String query) {
    SpecKeys out = new SpecKeys();
    for (String pair : query.isEmpty() ? new String[0] : query.split("&", -1)) {
      out.add(pair);
    }
    return out;
  }

  private void add(String pair) {
    int equals = pair.indexOf('=');
    if (equals <= 0 || pair.length() > MAX_KEY * LONGEST_CODE) {
      throw noPair(pair);
    }
    String key = decode(pair.substring(0, equals));
    String value = decode(pair.substring(equals + 1));
    if (key.length() + value.length() > MAX_KEY) {
      throw noPair(pair);
    }
    if (keys.put(key, value) != null) {
      throw new IllegalArgumentException("the key " + key + " is there twice");
    }
  }

  private static IllegalArgumentException noPair(String pair) {
    String shown = pair.length() > SHOWN ? pair.substring(0, SHOWN) + "…" : pair;
    return new IllegalArgumentException(
        "after the ? come KEY=VALUE pairs of at most " + MAX_KEY + " characters, not: " + shown);
  }

  private static String decode(String text) {
    try {
      return Percent.decode(text);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(
          "\"" + text + "\" has a % that is not followed by two hex digits; write % as %25", e);
    }
  }

  @Nullable String take(String key) {
    return keys.remove(key);
  }

  boolean yes(String key) {
    String value = take(key);
    if (value == null || value.equals("no")) {
      return false;
    }
    if (value.equals("yes")) {
      return true;
    }
    throw new IllegalArgumentException(key + " must be yes or no, not \"" + value + "\"");
  }

  int whole(String key, int usual, int least, int most) {
    String value = take(key);
    return value == null ? usual : whole(key, value, least, most);
  }

  static int whole(String key, String value, int least, int most) {
    long number = wholeLong(key, value);
    if (number < least || number > most) {
      throw new IllegalArgumentException(
          key + " must be " + least + " to " + most + ", not " + number);
    }
    return (int) number;
  }

  static long wholeLong(String key, String value) {
    try {
      return Long.parseLong(value);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(key + " must be a whole number, not \"" + value + "\"", e);
    }
  }

  @Nullable Double number(String key) {
    String value = take(key);
    if (value == null) {
      return null;
    }
    try {
      return Double.valueOf(value);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(key + " must be a number, not \"" + value + "\"", e);
    }
  }

  <T> T oneOf(String key, T usual, List<T> values, Function<T, String> word) {
    String value = take(key);
    if (value == null) {
      return usual;
    }
    return values.stream()
        .filter(v -> word.apply(v).equals(value))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    key
                        + " must be "
                        + values.stream().map(word).collect(Collectors.joining(", "))
                        + "; not \""
                        + value
                        + "\""));
  }

  /** A time as {@code 250ms}, {@code 2s} or {@code 1m}; at most nine digits. */
  Duration duration(String key, Duration usual) {
    String value = take(key);
    if (value == null) {
      return usual;
    }
    String digits = value.replaceFirst("(ms|s|m)$", "");
    if (!digits.matches("[0-9]{1,9}") || digits.length() == value.length()) {
      throw new IllegalArgumentException(
          key + " must be a time such as 500ms, 2s or 1m, not \"" + value + "\"");
    }
    long number = Long.parseLong(digits);
    return switch (value.substring(digits.length())) {
      case "ms" -> Duration.ofMillis(number);
      case "s" -> Duration.ofSeconds(number);
      default -> Duration.ofMinutes(number);
    };
  }

  void refuseRest(String kind) {
    if (!keys.isEmpty()) {
      throw new IllegalArgumentException(
          kind
              + " has no key "
              + String.join(", ", keys.keySet())
              + "; the keys are baud, bits, parity, stop (serial, and tcp with rfc2217=yes),"
              + " seed (practice), speed (practice, replay), format, unit, ask, every");
    }
  }
}
