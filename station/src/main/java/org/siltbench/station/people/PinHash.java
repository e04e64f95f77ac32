package org.siltbench.station.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.random.RandomGenerator;
import java.util.regex.Pattern;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * Argon2id (RFC 9106) of a PIN. 19 MiB, 2 passes, 1 lane: the least that common practice takes as
 * sound; the figures stand beside each hash, so that they can grow.
 */
final class PinHash {

  private static final int MEMORY_KIB = 19_456;
  private static final int PASSES = 2;
  private static final int LANES = 1;
  private static final Pattern FORM =
      Pattern.compile("argon2id:([0-9]{1,7}):([0-9]{1,3}):([0-9]{1,2}):[0-9a-f]{32}:[0-9a-f]{64}");

  private PinHash() {}

  static String of(char[] pin, RandomGenerator random) {
    byte[] salt = new byte[16];
    random.nextBytes(salt);
    return String.join(
        ":",
        "argon2id",
        Integer.toString(MEMORY_KIB),
        Integer.toString(PASSES),
        Integer.toString(LANES),
        HexFormat.of().formatHex(salt),
        HexFormat.of().formatHex(hash(pin, salt, MEMORY_KIB, PASSES, LANES)));
  }

  /** True if the text is a hash as {@link #of} makes them, at a cost that can be paid. */
  static boolean isSound(String kept) {
    var form = FORM.matcher(kept);
    return form.matches()
        && isFrom(form.group(1), 8, 1 << 20)
        && isFrom(form.group(2), 1, 100)
        && isFrom(form.group(3), 1, 64);
  }

  private static boolean isFrom(String number, int least, int most) {
    int value = Integer.parseInt(number);
    return value >= least && value <= most;
  }

  static boolean fits(char[] pin, String kept) {
    String[] parts = kept.split(":");
    byte[] salt = HexFormat.of().parseHex(parts[4]);
    int memory = Integer.parseInt(parts[1]);
    byte[] hash = hash(pin, salt, memory, Integer.parseInt(parts[2]), Integer.parseInt(parts[3]));
    return MessageDigest.isEqual(hash, HexFormat.of().parseHex(parts[5]));
  }

  private static byte[] hash(char[] pin, byte[] salt, int memory, int passes, int lanes) {
    Argon2BytesGenerator generator = new Argon2BytesGenerator();
    generator.init(
        new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
            .withVersion(Argon2Parameters.ARGON2_VERSION_13)
            .withMemoryAsKB(memory)
            .withIterations(passes)
            .withParallelism(lanes)
            .withSalt(salt)
            .build());
    byte[] hash = new byte[32];
    generator.generateBytes(new String(pin).getBytes(StandardCharsets.UTF_8), hash);
    return hash;
  }
}
