package org.siltbench.balance.format;

import java.util.Arrays;
import java.util.Optional;

/** What a mark or a text in a line means; the words are those of the format file. */
public enum Meaning {
  NOTHING("nothing"),
  STABLE("stable"),
  MOVING("moving"),
  UNDER("under"),
  OVER("over"),
  FAULT("fault"),
  IGNORE("ignore");

  private final String word;

  Meaning(String word) {
    this.word = word;
  }

  /** The word in the file. */
  public String word() {
    return word;
  }

  static Optional<Meaning> ofWord(String word) {
    return Arrays.stream(values()).filter(m -> m.word.equals(word)).findFirst();
  }
}
