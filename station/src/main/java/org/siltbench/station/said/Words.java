package org.siltbench.station.said;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What can be put in a person's language. */
public interface Words {

  /**
   * English at the screen: as that of commands, but without their options, which nobody has there.
   */
  Locale SCREEN_ENGLISH = new Locale.Builder().setLanguage("en").setVariant("screen").build();

  /** In this language. */
  String in(Locale language);

  /** In the language of commands and ledgers. */
  default String english() {
    return in(Locale.ENGLISH);
  }

  /** True if there is nothing to say. */
  default boolean isEmpty() {
    return english().isEmpty();
  }

  /** Nothing to say. */
  static Words none() {
    return new Verbatim("");
  }

  /** All of them, with this between. */
  static Words joined(String between, List<? extends Words> all) {
    List<Words> kept = List.copyOf(all);
    return language ->
        kept.stream().map(one -> one.in(language)).collect(Collectors.joining(between));
  }

  /** As it came from outside: from the system, a balance, a file. */
  static Words verbatim(String text) {
    return new Verbatim(text);
  }

  /** The same in every language. */
  record Verbatim(String text) implements Words {
    @Override
    public String in(Locale language) {
      return text;
    }
  }
}
