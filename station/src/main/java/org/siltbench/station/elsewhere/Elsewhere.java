package org.siltbench.station.elsewhere;

import java.util.Arrays;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.reason.Reason;
import org.siltbench.calc.reason.ReasonCode;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/**
 * What the other rooms say, in a person's language: their reasons are codes with an English
 * sentence, and the sentences of the window stand here, one bundle for each enum of codes.
 */
public final class Elsewhere {

  private Elsewhere() {}

  /** A reason. */
  public static Words words(Reason reason) {
    return new Told(reason);
  }

  /** What an exception says: our own in any language, others' as it came. */
  public static Words words(Throwable e) {
    return SystemWords.of(e).orElseGet(() -> words(Reason.of(e)));
  }

  private record Told(Reason reason) implements Words {
    @Override
    public String in(Locale language) {
      Object[] gaps = reason.gaps().stream().map(Told::gap).toArray();
      return sentence(reason.code(), language)
          .map(pattern -> Said.filled(pattern, Arrays.asList(gaps), language))
          .orElseGet(() -> Said.filled(reason.code().english(), Arrays.asList(gaps), language));
    }

    private static Object gap(Object value) {
      return value instanceof Reason inner
          ? words(inner)
          : value instanceof Throwable e ? words(e) : value;
    }

    @Override
    public String toString() {
      return english();
    }
  }

  private static Optional<String> sentence(ReasonCode code, Locale language) {
    ResourceBundle words = language.equals(Locale.ENGLISH) ? null : bundle(code, language);
    String key = code.name().toLowerCase(Locale.ROOT).replace('_', '.');
    return words != null && words.containsKey(key)
        ? Optional.of(words.getString(key))
        : Optional.empty();
  }

  /** English has none: the room itself gives its English sentences. */
  private static @Nullable ResourceBundle bundle(ReasonCode code, Locale language) {
    try {
      return ResourceBundle.getBundle(
          name(code.getDeclaringClass()),
          language,
          Elsewhere.class.getClassLoader(),
          ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    } catch (MissingResourceException none) {
      return null;
    }
  }

  /** The bundle of an enum: its name in small letters, as {@code balancesays}. */
  static String name(Class<?> codes) {
    return Elsewhere.class.getPackageName() + '.' + codes.getSimpleName().toLowerCase(Locale.ROOT);
  }
}
