package org.siltbench.station.ledger;

/**
 * Which line of its act a line is. The lines of one act are written and forced together; after a
 * power cut they are all there, or none of them is kept.
 *
 * @param place from 1
 * @param of how many lines the act has
 */
public record ActPart(int place, int of) {

  /** The one line of an act. */
  public static final ActPart ALONE = new ActPart(1, 1);

  /** Refuses a place outside the act. */
  public ActPart {
    if (place < 1 || place > of) {
      throw new IllegalArgumentException("line " + place + " of an act of " + of);
    }
  }

  boolean isFirst() {
    return place == 1;
  }

  boolean isLast() {
    return place == of;
  }

  boolean follows(ActPart before) {
    return isFirst() ? before.isLast() : before.of == of && before.place == place - 1;
  }
}
