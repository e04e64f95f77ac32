package org.siltbench.balance.format;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading.Mark;

/**
 * What a mark or a text in a line means; the words are those of the format file. Of two meanings in
 * one line the one of higher rank holds.
 */
public enum Meaning {
  NOTHING("nothing", 0, Mark.NONE),
  STABLE("stable", 1, Mark.STABLE),
  MOVING("moving", 2, Mark.MOVING),
  UNDER("under", 3, null),
  OVER("over", 4, null),
  FAULT("fault", 5, null),
  IGNORE("ignore", 6, null);

  private static final Meaning[] BY_RANK = {NOTHING, STABLE, MOVING, UNDER, OVER, FAULT, IGNORE};

  private final String word;
  private final int rank;
  private final @Nullable Mark mark;

  Meaning(String word, int rank, @Nullable Mark mark) {
    this.word = word;
    this.rank = rank;
    this.mark = mark;
  }

  /** The word in the file. */
  public String word() {
    return word;
  }

  int rank() {
    return rank;
  }

  static Meaning ofRank(int rank) {
    return BY_RANK[rank];
  }

  /** What it says of a mass; null if a line that says so carries none. */
  @Nullable Mark mark() {
    return mark;
  }

  static Optional<Meaning> ofWord(String word) {
    return Arrays.stream(values()).filter(m -> m.word.equals(word)).findFirst();
  }
}
