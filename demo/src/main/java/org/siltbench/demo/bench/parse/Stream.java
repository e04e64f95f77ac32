package org.siltbench.demo.bench.parse;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.Locale;
import java.util.SplittableRandom;

/**
 * What a balance sends: the rest of a line, then whole ones.
 *
 * @param bytes all of it
 * @param lines how many whole lines are in it
 */
@SuppressWarnings("ArrayRecordComponent") // never compared; nobody changes the bytes
public record Stream(byte[] bytes, int lines) {

  private static final int LINES = 20_000;

  /** Lines drawn from a seed: masses up to 120 g and some below zero, one in three still moving. */
  public static Stream of(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    StringBuilder out = new StringBuilder("rest of a line\r\n");
    for (int i = 0; i < LINES; i++) {
      double grams = random.nextDouble(-1, 120);
      String mark = random.nextInt(3) == 0 ? ".." : "ok";
      out.append(
          String.format(
              Locale.ROOT, "%s %s%11.5f g\r\n", mark, grams < 0 ? "-" : "+", Math.abs(grams)));
    }
    return new Stream(out.toString().getBytes(ISO_8859_1), LINES);
  }
}
