package org.siltbench.station.command;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;

/** Spoils good input in many ways, the same ways for the same seed. */
public final class Hostile {

  private static final String[] BITS = {
    "",
    "\u0000",
    "\"",
    "'",
    ",",
    ";",
    "\t",
    "\r",
    "\n",
    "\r\n",
    "\\",
    "/",
    "../../",
    "=1+1",
    "@x",
    "-",
    "+",
    "%",
    "{",
    "}",
    "[",
    "]",
    ":",
    "#",
    "0",
    "-1",
    "1e9",
    "1e999999999",
    "NaN",
    "∞",
    "999999999999999999999999",
    "0.0000000000000001",
    "\uFEFF",
    "\u202E",
    "é",
    "\uD83D\uDE00",
    "½",
    "true",
    "null",
    "filter",
    "2026-02-30T25:61:00+99:00",
    "9999999999-01-01",
    "drop table entry",
    "<!DOCTYPE x>",
    "$(id)",
    "\u2028",
    "A".repeat(300)
  };

  private final Random random;

  public Hostile(long seed) {
    random = new Random(seed);
  }

  /** A number below. */
  public int below(int bound) {
    return random.nextInt(bound);
  }

  /** Good text, spoilt in one to four places; now and then bytes that are no text at all. */
  public byte[] bytes(String good) {
    byte[] bytes = good.getBytes(StandardCharsets.UTF_8);
    if (random.nextInt(25) == 0) {
      return noise(random.nextInt(400));
    }
    for (int n = 1 + random.nextInt(4); n > 0; n--) {
      bytes = spoilt(bytes);
    }
    return bytes;
  }

  /** The same as text. */
  public String text(String good) {
    return new String(bytes(good), StandardCharsets.UTF_8);
  }

  private byte[] noise(int length) {
    byte[] noise = new byte[length];
    random.nextBytes(noise);
    return noise;
  }

  private byte[] spoilt(byte[] bytes) {
    int at = random.nextInt(bytes.length + 1);
    int end = Math.min(bytes.length, at + random.nextInt(12));
    byte[] bit = BITS[random.nextInt(BITS.length)].getBytes(StandardCharsets.UTF_8);
    return switch (random.nextInt(7)) {
      case 0 -> joined(bytes, at, noise(random.nextInt(4)), at);
      case 1 -> Arrays.copyOf(bytes, at);
      case 2 -> joined(bytes, at, new byte[0], end);
      case 3 -> joined(bytes, at, Arrays.copyOfRange(bytes, random.nextInt(at + 1), at), at);
      case 4 -> joined(bytes, at, bit, end);
      default -> joined(bytes, at, bit, at);
    };
  }

  private static byte[] joined(byte[] bytes, int to, byte[] middle, int from) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, to);
    out.writeBytes(middle);
    out.write(bytes, from, bytes.length - from);
    return out.toByteArray();
  }
}
