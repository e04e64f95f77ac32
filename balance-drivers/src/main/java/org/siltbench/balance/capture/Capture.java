package org.siltbench.balance.capture;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.format.Quoted;
import org.siltbench.calc.reason.Reason;

/**
 * A recorded stream.
 *
 * @param from the link it was recorded from
 * @param began when the recording began
 * @param chunks the bytes in order of arrival
 * @param whole false if the recording stopped at its size limit
 */
public record Capture(String from, OffsetDateTime began, List<Chunk> chunks, boolean whole) {

  /** The first line of a capture file. */
  static final String FIRST_LINE = "siltbench capture 1";

  static final String CUT = "cut: the size limit was reached";

  private static final Reason AGAIN = BalanceSays.RECORD_AGAIN.with();
  private static final long LARGEST_FILE = 64L << 20;

  /** Copies. */
  public Capture {
    chunks = List.copyOf(chunks);
  }

  /** True if the file says it is a capture. */
  public static boolean is(Path file) throws IOException {
    byte[] wanted = FIRST_LINE.getBytes(StandardCharsets.ISO_8859_1);
    try (var in = Files.newInputStream(file)) {
      return java.util.Arrays.equals(in.readNBytes(wanted.length), wanted);
    }
  }

  /**
   * Reads a capture file.
   *
   * @throws BalanceException if a line of it cannot be read
   */
  public static Capture read(Path file) throws IOException {
    if (Files.size(file) > LARGEST_FILE) {
      throw new BalanceException(BalanceSays.LARGER.with(file, 64), AGAIN);
    }
    try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.ISO_8859_1)) {
      return new Reader(file, in).read();
    }
  }

  private static final class Reader {

    private final Path file;
    private final BufferedReader in;
    private int number;

    Reader(Path file, BufferedReader in) {
      this.file = file;
      this.in = in;
    }

    Capture read() throws IOException {
      expect(FIRST_LINE.equals(line()), BalanceSays.FIRST_LINE.with(FIRST_LINE));
      String from = from(value("from: "));
      OffsetDateTime began = began(value("began: "));
      List<Chunk> chunks = new ArrayList<>();
      String line = line();
      for (; !line.isEmpty() && !line.equals(CUT); line = line()) {
        chunks.add(chunk(line, chunks.isEmpty() ? 0 : chunks.get(chunks.size() - 1).micros()));
      }
      return new Capture(from, began, chunks, !line.equals(CUT));
    }

    private String from(String quoted) throws IOException {
      try {
        return Quoted.unquote(quoted);
      } catch (IllegalArgumentException e) {
        throw new BalanceException(where(Reason.of(e)), AGAIN, e);
      }
    }

    private OffsetDateTime began(String text) throws IOException {
      try {
        OffsetDateTime began = OffsetDateTime.parse(text);
        expect(began.getYear() > 1900 && began.getYear() < 10_000, BalanceSays.NO_YEAR.with());
        return began;
      } catch (DateTimeParseException e) {
        throw new BalanceException(where(BalanceSays.NO_TIME.with(text)), AGAIN, e);
      }
    }

    private Chunk chunk(String line, long last) throws IOException {
      int blank = line.indexOf(' ');
      try {
        long micros = Long.parseLong(line.substring(0, Math.max(0, blank)));
        expect(micros >= last && micros < 1L << 52, BalanceSays.TIME_BACK.with());
        return new Chunk(micros, Quoted.unquote(line.substring(blank + 1)));
      } catch (IllegalArgumentException e) {
        throw new BalanceException(where(BalanceSays.NO_TIME_AND_TEXT.with(line)), AGAIN, e);
      }
    }

    private String value(String key) throws IOException {
      String line = line();
      expect(line.startsWith(key), BalanceSays.EXPECTED.with(key));
      return line.substring(key.length());
    }

    private String line() throws IOException {
      number++;
      String line = in.readLine();
      return line == null ? "" : line;
    }

    private void expect(boolean holds, Reason otherwise) throws IOException {
      if (!holds) {
        throw new BalanceException(where(otherwise), AGAIN);
      }
    }

    private Reason where(Reason what) {
      return BalanceSays.RECORDING_LINE.with(file, number, what);
    }
  }
}
