package org.siltbench.balance.format;

import java.util.Arrays;
import java.util.Optional;
import org.siltbench.balance.Reading.Mark;

/**
 * What a mark or a text in a line means; the words are those of the format file. Of two meanings in
 * one line the one of higher rank holds.
 */
public enum Meaning {
  NOTHING("nothing", 0, Mark.NONE),
  STABLE("stable", 1, Mark.STABLE),
  MOVING("moving", 2, Mark.MOVING),
  UNDER("under", 3, Mark.NONE),
  OVER("over", 4, Mark.NONE),
  FAULT("fault", 5, Mark.NONE),
  IGNORE("ignore", 6, Mark.NONE);

  private static final Meaning[] BY_RANK = {NOTHING, STABLE, MOVING, UNDER, OVER, FAULT, IGNORE};

  private static final Mark[] MARKS =
      Arrays.stream(BY_RANK).map(Meaning::mark).toArray(Mark[]::new);

  /** The highest rank of a line that carries a mass. */
  static final int LAST_WITH_MASS = MOVING.rank;

  private final String word;
  private final int rank;
  private final Mark mark;

  Meaning(String word, int rank, Mark mark) {
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

  /** What the meaning of a rank says of a mass. */
  static Mark markOf(int rank) {
    return MARKS[rank];
  }

  /** What it says of a mass. */
  Mark mark() {
    return mark;
  }

  /** False if a line that says so carries no mass. */
  boolean hasMass() {
    return rank <= LAST_WITH_MASS;
  }

  static Optional<Meaning> ofWord(String word) {
    return Arrays.stream(values()).filter(m -> m.word.equals(word)).findFirst();
  }
}
