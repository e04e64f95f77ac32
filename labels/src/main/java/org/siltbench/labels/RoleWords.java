package org.siltbench.labels;

import java.util.Locale;

/** A filter's role in the words that papers print. */
public final class RoleWords {

  private RoleWords() {}

  /** The words for a stable role code such as {@code field-blank}; empty for a plain sample. */
  public static String of(String role) {
    return role.equals("sample") ? "" : role.replace('-', ' ').toUpperCase(Locale.ROOT);
  }

  /** The words for a role and, where it is one of a pair, DUPLICATE. */
  public static String of(String role, boolean duplicate) {
    String words = of(role);
    if (!duplicate) {
      return words;
    }
    return words.isEmpty() ? "DUPLICATE" : words + ", DUPLICATE";
  }
}
