package org.siltbench.calc.id;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The code of a batch: the bench code and a serial of two characters.
 *
 * @param text six characters
 */
public record BatchCode(String text) {

  /** Characters in a batch code. */
  public static final int LENGTH = BenchCode.LENGTH + 2;

  /** The last serial a bench can give; the first is 1. */
  public static final int LAST_SERIAL = Alphabet.SIZE * Alphabet.SIZE - 1;

  /**
   * @throws IllegalArgumentException if the text is no batch code
   */
  public BatchCode {
    if (text.length() != LENGTH || !Alphabet.covers(text)) {
      throw new IllegalArgumentException(
          "not a batch code (" + LENGTH + " characters of " + Alphabet.CHARACTERS + "): " + text);
    }
    new BenchCode(text.substring(0, BenchCode.LENGTH));
  }

  /**
   * The batch of a bench with a serial.
   *
   * @param serial 1 to 783; beyond that the bench has used up its codes and a new bench is needed
   * @throws IllegalArgumentException if the serial is out of range
   */
  public static BatchCode of(BenchCode bench, int serial) {
    if (serial < 1 || serial > LAST_SERIAL) {
      throw new IllegalArgumentException(
          "batch serial " + serial + " is not within 1 to " + LAST_SERIAL + "; start a new bench");
    }
    return new BatchCode(bench.text() + Alphabet.encode(serial, 2));
  }

  /** The bench that made the batch. */
  public BenchCode bench() {
    return new BenchCode(text.substring(0, BenchCode.LENGTH));
  }

  /** The serial within the bench. */
  public int serial() {
    return Alphabet.decode(text.substring(BenchCode.LENGTH));
  }

  /**
   * All filter IDs of the batch in order. Serials whose check character falls outside the alphabet
   * are left out, so about 590 of 783 remain.
   */
  public Stream<FilterId> filters() {
    return IntStream.rangeClosed(1, FilterId.LAST_SERIAL)
        .mapToObj(this::filter)
        .flatMap(List::stream);
  }

  private List<FilterId> filter(int serial) {
    String body = text + Alphabet.encode(serial, 2);
    char check = CheckCharacter.MOD_37_2.of(body);
    return Alphabet.contains(check) ? List.of(new FilterId(body + check)) : List.of();
  }

  /**
   * The first {@code count} filter IDs.
   *
   * @throws IllegalArgumentException if the batch cannot hold that many, or none is asked for
   */
  public List<FilterId> filters(int count) {
    List<FilterId> ids = filters().limit(Math.max(0, count)).toList();
    if (count < 1 || ids.size() < count) {
      throw new IllegalArgumentException(
          "a batch holds 1 to " + filters().count() + " filters, not " + count);
    }
    return ids;
  }

  @Override
  public String toString() {
    return text;
  }
}
