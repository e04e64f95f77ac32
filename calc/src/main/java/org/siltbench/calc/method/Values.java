package org.siltbench.calc.method;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;
import org.siltbench.calc.reason.Reason;

/**
 * The values of a method's text by key. Each question names what it expects; a fault is noted and a
 * stand-in returned, so that all faults are told together.
 */
final class Values {

  private record Line(int number, String value) {}

  private final Map<String, Line> lines = new LinkedHashMap<>();
  private final Map<String, Boolean> asked = new LinkedHashMap<>();
  private final List<MethodFault> faults = new ArrayList<>();

  Values(String text) {
    int number = 0;
    for (String raw : text.replaceFirst("^\uFEFF", "").split("\\R", -1)) {
      number++;
      String line = raw.replaceFirst("(^|\\s)#.*", "").strip();
      if (!line.isEmpty()) {
        take(number, line);
      }
    }
  }

  private void take(int number, String line) {
    int equals = line.indexOf('=');
    if (equals < 1) {
      faults.add(
          new MethodFault(number, MethodFault.NO_KEY, MethodTextSays.KEY_AND_VALUE.with(), line));
      return;
    }
    String key = line.substring(0, equals).strip();
    String value = line.substring(equals + 1).strip();
    if (value.isEmpty()) {
      faults.add(new MethodFault(number, key, MethodTextSays.A_VALUE.with(), line));
    } else if (lines.putIfAbsent(key, new Line(number, value)) != null) {
      faults.add(
          new MethodFault(number, key, MethodTextSays.ONCE.with(), MethodTextSays.AGAIN.with()));
    }
  }

  /** Reads one value; where it is missing or wrong, notes it and gives the stand-in. */
  <T> T value(String key, Reason expected, T standIn, Function<String, T> reading) {
    asked.put(key, true);
    Line line = lines.get(key);
    if (line == null) {
      if (!isFaulty(key)) {
        faults.add(new MethodFault(0, key, expected, ""));
      }
      return standIn;
    }
    try {
      return reading.apply(line.value());
    } catch (IllegalArgumentException e) {
      faults.add(new MethodFault(line.number(), key, expected, line.value()));
      return standIn;
    }
  }

  private boolean isFaulty(String key) {
    return faults.stream().anyMatch(fault -> fault.key().equals(key));
  }

  /** The value, or null where the text says "none". */
  <T> @Nullable T orNone(String key, Reason expected, Function<String, T> reading) {
    return value(
            key,
            MethodTextSays.OR_NONE.with(expected),
            Optional.<T>empty(),
            v -> v.equals("none") ? Optional.<T>empty() : Optional.of(reading.apply(v)))
        .orElse(null);
  }

  String text(String key, Reason expected) {
    return value(key, expected, "", v -> v);
  }

  double number(String key, double low, double high, Object unit) {
    return value(key, expectation(low, high, unit), low, v -> Numbers.within(v, low, high));
  }

  @Nullable Double numberOrNone(String key, double low, double high, Object unit) {
    return orNone(key, expectation(low, high, unit), v -> Numbers.within(v, low, high));
  }

  private static Reason expectation(double low, double high, Object unit) {
    return MethodTextSays.NUMBER.with(Numbers.plain(low), Numbers.plain(high), unit);
  }

  int whole(String key, int low, int high) {
    return value(
        key,
        MethodTextSays.WHOLE_NUMBER.with(low, high),
        low,
        v -> (int) Numbers.within(Integer.toString(Integer.parseInt(v)), low, high));
  }

  Mass milligrams(String key, double low, double high) {
    return value(
        key, expectation(low, high, "mg"), Mass.ofMilligrams(low), v -> Numbers.mass(v, low, high));
  }

  @Nullable Mass milligramsOrNone(String key, double low, double high) {
    return orNone(key, expectation(low, high, "mg"), v -> Numbers.mass(v, low, high));
  }

  Volume millilitres(String key, double low, double high) {
    return value(
        key,
        expectation(low, high, "mL"),
        Volume.ofMillilitres(low),
        v -> {
          Numbers.within(v, low, high);
          return Volume.ofMillilitres(v);
        });
  }

  /** A number, or none; also where the key is not there: older texts do not have it. */
  @Nullable Double numberOrAbsent(String key, double low, double high, Object unit) {
    return isAbsent(key) ? null : numberOrNone(key, low, high, unit);
  }

  /** A span, or none; also where the key is not there: older texts do not have it. */
  @Nullable Span spanOrAbsent(String key, double low, double high) {
    return isAbsent(key)
        ? null
        : orNone(key, spanExpected("80 to 120", low, high), v -> Numbers.span(v, low, high));
  }

  private boolean isAbsent(String key) {
    asked.put(key, true);
    return !lines.containsKey(key);
  }

  static Reason spanExpected(String example, double low, double high) {
    return MethodTextSays.SPAN.with(example, Numbers.plain(low), Numbers.plain(high));
  }

  Span span(String key, double low, double high) {
    Reason expected = spanExpected("103 to 105", low, high);
    return value(key, expected, new Span(low, high), v -> Numbers.span(v, low, high));
  }

  <E> E word(String key, List<E> choices, Function<E, String> name) {
    Reason expected =
        MethodTextSays.ONE_OF.with(String.join(", ", choices.stream().map(name).toList()));
    return value(key, expected, choices.get(0), v -> choice(v, choices, name));
  }

  private static <E> E choice(String word, List<E> choices, Function<E, String> name) {
    return choices.stream()
        .filter(e -> name.apply(e).equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(word));
  }

  /** Notes a fault found when values are put together, unless the value was wrong by itself. */
  void fault(String key, Reason expected) {
    if (isFaulty(key)) {
      return;
    }
    Line line = lines.get(key);
    faults.add(
        line == null
            ? new MethodFault(0, key, expected, "")
            : new MethodFault(line.number(), key, expected, line.value()));
  }

  /** Throws if anything was wrong, unknown keys included. */
  void close() {
    lines.forEach(
        (key, line) -> {
          if (!asked.containsKey(key)) {
            List<String> near = NearNames.of(key, asked.keySet(), 2);
            faults.add(
                new MethodFault(
                    line.number(),
                    key,
                    MethodTextSays.KNOWN_KEY.with(String.join(", ", near)),
                    line.value()));
          }
        });
    if (!faults.isEmpty()) {
      faults.sort(
          Comparator.comparingInt(fault -> fault.line() == 0 ? Integer.MAX_VALUE : fault.line()));
      throw new MethodException(faults);
    }
  }
}
