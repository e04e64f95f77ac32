package org.siltbench.balance.practice;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import org.siltbench.calc.quantity.Mass;

/**
 * The true masses of practice filters: a pure function of seed, filter ID and status, so that any
 * process agrees on them without asking another.
 */
public final class PracticeTruth {

  private final long seed;

  /** The truths of one seed. */
  public PracticeTruth(long seed) {
    this.seed = seed;
  }

  /** The clean filter: 85 to 125 mg, about that of a 47 mm glass-fibre filter (from memory). */
  public Mass preMass(String filterId) {
    return Mass.ofMilligrams(85 + 40 * share(filterId, "clean"));
  }

  /** What the water left on it: 1 to 150 mg, small ones more often. */
  public Mass residue(String filterId) {
    double share = share(filterId, "residue");
    return Mass.ofMilligrams(1 + 149 * share * share);
  }

  /**
   * What lies on the pan.
   *
   * @param status the word of the filter's status: {@code planned}, {@code pre-weighed} and {@code
   *     issued} are clean, every later one carries its residue
   */
  public Mass of(String filterId, String status) {
    Mass clean = preMass(filterId);
    return switch (status) {
      case "planned", "pre-weighed", "issued" -> clean;
      default -> clean.plus(residue(filterId));
    };
  }

  /** A number from 0 to below 1 that only this seed, filter and purpose give. */
  double share(String filterId, String purpose) {
    byte[] text = (seed + "|" + filterId + "|" + purpose).getBytes(StandardCharsets.UTF_8);
    return (ByteBuffer.wrap(sha256(text)).getLong() >>> 11) * 0x1p-53;
  }

  private static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
