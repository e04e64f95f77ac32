package org.siltbench.station.said;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Something said, not yet in a language.
 *
 * @param code what is said
 * @param gaps what is filled in for {0}, {1}, …; {@link Words} among them are put into the same
 *     language
 */
public record Said(Code code, List<@Nullable Object> gaps) implements Words {

  private static final Pattern GAP = Pattern.compile("\\{(\\d)}");

  /** An unmodifiable copy. */
  public Said {
    gaps = Collections.unmodifiableList(new ArrayList<>(gaps));
  }

  /** This code with these gaps. */
  public static Said of(Code code, @Nullable Object... gaps) {
    return new Said(code, java.util.Arrays.asList(gaps));
  }

  @Override
  public String in(Locale language) {
    return text(code.key(), language);
  }

  /** One part of it, as {@code what}; empty where there is none. */
  public String part(String part, Locale language) {
    return text(code.key() + '.' + part, language);
  }

  private String text(String key, Locale language) {
    ResourceBundle words = words(language);
    return words.containsKey(key) ? filled(words.getString(key), gaps, language) : "";
  }

  /** A language without a bundle gets the English one: a person is never left without a message. */
  private ResourceBundle words(Locale language) {
    Class<?> home = code.getDeclaringClass();
    try {
      return ResourceBundle.getBundle(
          home.getPackageName() + ".says",
          language,
          home.getClassLoader(),
          ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    } catch (MissingResourceException e) {
      throw new IllegalStateException("the bundle of " + home.getName() + " is missing", e);
    }
  }

  /** A sentence with its gaps filled. */
  public static String filled(String pattern, List<@Nullable Object> gaps, Locale language) {
    Matcher gap = GAP.matcher(pattern);
    StringBuilder out = new StringBuilder();
    while (gap.find()) {
      int at = Integer.parseInt(gap.group(1));
      Object value = at < gaps.size() ? gaps.get(at) : gap.group();
      String text = value instanceof Words words ? words.in(language) : String.valueOf(value);
      gap.appendReplacement(out, Matcher.quoteReplacement(text));
    }
    return gap.appendTail(out).toString();
  }

  @Override
  public String toString() {
    return english();
  }
}
