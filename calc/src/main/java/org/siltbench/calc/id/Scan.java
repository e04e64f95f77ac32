package org.siltbench.calc.id;

import org.jspecify.annotations.Nullable;

/**
 * What a scanner or a person entered, understood. Every scan input takes the bare filter ID or the
 * full text of a bag code, in any case, with blanks around and with the hyphens printed for people.
 * The letters O and I are read as the digits 0 and 1 that they were meant for: no identity holds
 * them.
 */
public sealed interface Scan {

  /** The filter ID was entered and its check holds. */
  record Bare(FilterId filter) implements Scan {}

  /** A whole bag code was entered and both checks hold. */
  record Bag(BagCode code) implements Scan {}

  /**
   * The length is right, a check is not: a character is wrong or two are exchanged.
   *
   * @param which what does not hold
   * @param filter the filter ID where its own check holds: a hint, never an answer
   */
  record WrongCheck(String entered, Which which, @Nullable FilterId filter) implements Scan {}

  /** Which check does not hold. */
  enum Which {
    /** The filter ID's own check. */
    FILTER_ID,
    /** The check over the whole bag code; the ID within reads well, the mass may not. */
    BAG_CODE,
    /** Both. */
    BOTH
  }

  /**
   * No identity of ours can be made of it.
   *
   * @param why a short sentence for the person
   */
  record Damaged(String entered, String why) implements Scan {}

  /**
   * It looks as if scanner and computer are set to different keyboards.
   *
   * @param layout the keyboard it looks like
   * @param repaired what was meant, a {@link Bare} or {@link Bag}, where that can be told; else
   *     null
   */
  record OtherLayout(String entered, String layout, @Nullable Scan repaired) implements Scan {}

  /** The filter, when the entry can be trusted as it stands; otherwise null. */
  default @Nullable FilterId filterOrNull() {
    if (this instanceof Bare bare) {
      return bare.filter();
    }
    return this instanceof Bag bag ? bag.code().filter() : null;
  }

  /** A short message for the person: what is wrong and what to do; empty when nothing is. */
  default String message() {
    return ScanMessages.of(this);
  }

  /** Understands an entry. Never throws; an empty entry is {@link Damaged}. */
  static Scan of(String entered) {
    return ScanReader.read(entered);
  }
}
