package org.siltbench.calc.id;

/**
 * The identity of one filter: batch code, a serial of two characters and a MOD 37-2 check
 * character, nine characters in all. One wrong character and any two exchanged characters are
 * found.
 *
 * @param text nine characters of the alphabet whose check holds
 */
public record FilterId(String text) implements Comparable<FilterId> {

  /** Characters in a filter ID. */
  public static final int LENGTH = BatchCode.LENGTH + 3;

  /** The last serial within a batch; the first is 1. */
  public static final int LAST_SERIAL = Alphabet.SIZE * Alphabet.SIZE - 1;

  /**
   * @throws IllegalArgumentException if the text is no filter ID; {@link Scan#of} says why
   */
  public FilterId {
    if (text.length() != LENGTH || !Alphabet.covers(text) || !CheckCharacter.MOD_37_2.holds(text)) {
      throw new IllegalArgumentException("not a filter ID: " + text);
    }
    new BenchCode(text.substring(0, BenchCode.LENGTH));
  }

  /** The batch it was prepared in. */
  public BatchCode batch() {
    return new BatchCode(text.substring(0, BatchCode.LENGTH));
  }

  /** The serial within the batch; serials have gaps where a check character was unusable. */
  public int serial() {
    return Alphabet.decode(text.substring(BatchCode.LENGTH, LENGTH - 1));
  }

  /** In groups for people: bench, batch, serial with check, as {@code K3DF-07-12R}. */
  public String grouped() {
    return text.substring(0, 4) + '-' + text.substring(4, 6) + '-' + text.substring(6);
  }

  @Override
  public int compareTo(FilterId other) {
    return text.compareTo(other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
