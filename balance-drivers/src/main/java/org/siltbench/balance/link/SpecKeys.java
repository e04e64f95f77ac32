package org.siltbench.balance.link;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.reason.Unfit;

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
      throw new Unfit(SpecSays.KEY_TWICE, key);
    }
  }

  private static IllegalArgumentException noPair(String pair) {
    String shown = pair.length() > SHOWN ? pair.substring(0, SHOWN) + "…" : pair;
    return new Unfit(SpecSays.NO_PAIR, MAX_KEY, shown);
  }

  private static String decode(String text) {
    try {
      return Percent.decode(text);
    } catch (IllegalArgumentException e) {
      throw new Unfit(SpecSays.NO_CODE.with(text), e);
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
    throw new Unfit(SpecSays.YES_OR_NO, key, value);
  }

  int whole(String key, int usual, int least, int most) {
    String value = take(key);
    return value == null ? usual : whole(key, value, least, most);
  }

  static int whole(String key, String value, int least, int most) {
    long number = wholeLong(key, value);
    if (number < least || number > most) {
      throw new Unfit(SpecSays.FROM_TO, key, least, most, number);
    }
    return (int) number;
  }

  static long wholeLong(String key, String value) {
    try {
      return Long.parseLong(value);
    } catch (NumberFormatException e) {
      throw new Unfit(SpecSays.WHOLE.with(key, value), e);
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
      throw new Unfit(SpecSays.NUMBER.with(key, value), e);
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
                new Unfit(
                    SpecSays.ONE_OF,
                    key,
                    values.stream().map(word).collect(Collectors.joining(", ")),
                    value));
  }

  /** A time as {@code 250ms}, {@code 2s} or {@code 1m}; at most nine digits. */
  Duration duration(String key, Duration usual) {
    String value = take(key);
    if (value == null) {
      return usual;
    }
    String digits = value.replaceFirst("(ms|s|m)$", "");
    if (!digits.matches("[0-9]{1,9}") || digits.length() == value.length()) {
      throw new Unfit(SpecSays.TIME, key, value);
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
      throw new Unfit(SpecSays.NO_KEY, kind, String.join(", ", keys.keySet()));
    }
  }
}
