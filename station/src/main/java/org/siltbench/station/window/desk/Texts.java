package org.siltbench.station.window.desk;

import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.ResourceBundle;
import org.siltbench.calc.reason.Reason;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.said.Words;

/** The words of one screen in one language. */
public final class Texts {

  private final ResourceBundle words;
  private final Locale locale;

  private Texts(ResourceBundle words, Locale locale) {
    this.words = words;
    this.locale = locale;
  }

  /** The bundle {@code texts} in the package of this class. */
  public static Texts of(Class<?> screen, Locale locale) {
    ResourceBundle.Control exact =
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
    return new Texts(
        ResourceBundle.getBundle(
            screen.getPackageName() + ".texts", locale, screen.getClassLoader(), exact),
        locale);
  }

  /** The text of a key. */
  public String get(String key) {
    return words.getString(key);
  }

  /** True if there is a text for this key. */
  public boolean has(String key) {
    return words.containsKey(key);
  }

  /** The text of a key with its gaps filled; an apostrophe is doubled in such texts. */
  public String get(String key, Object... gaps) {
    return gaps.length == 0
        ? get(key)
        : new MessageFormat(words.getString(key), locale).format(inLanguage(gaps));
  }

  /** What has no language yet is put into this one. */
  private Object[] inLanguage(Object[] gaps) {
    return Arrays.stream(gaps)
        .map(gap -> gap instanceof Words said ? said.in(locale) : gap)
        .toArray();
  }

  /** What was said, in the language of the window. */
  public String say(Words said) {
    return said.in(locale);
  }

  /** What another room says, in the language of the window. */
  public String tell(Reason reason) {
    return Elsewhere.words(reason).in(locale);
  }

  /** The language. */
  public Locale locale() {
    return locale;
  }
}
