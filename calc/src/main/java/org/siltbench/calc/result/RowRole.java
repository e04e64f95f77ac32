package org.siltbench.calc.result;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.BlankCorrection;
import org.siltbench.calc.blank.BlankKind;

/** What a row's filter was for; the words of the column {@code role}. */
public enum RowRole {
  SAMPLE("sample"),
  FIELD_BLANK("field-blank"),
  TRIP_BLANK("trip-blank"),
  METHOD_BLANK("method-blank"),
  CONTROL("control"),
  REFERENCE("reference");

  private final String word;
  private final @Nullable BlankKind blankKind;

  RowRole(String word) {
    this.word = word;
    this.blankKind = BlankCorrection.kindOf(word);
  }

  /** The stable word. */
  public String word() {
    return word;
  }

  /** Which blank it is; null for samples and references. */
  public @Nullable BlankKind blankKind() {
    return blankKind;
  }

  /** True for samples and references: a concentration is expected. */
  public boolean isWater() {
    return blankKind == null;
  }

  /** The role of a word; null for an unknown one. */
  public static @Nullable RowRole of(String word) {
    for (RowRole role : values()) {
      if (role.word.equals(word)) {
        return role;
      }
    }
    return null;
  }
}
