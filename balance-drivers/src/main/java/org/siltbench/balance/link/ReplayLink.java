package org.siltbench.balance.link;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.VirtualTime;
import org.siltbench.balance.capture.Capture;
import org.siltbench.balance.capture.Chunk;

/**
 * Bytes from a file: a capture with its times, or plain lines of text at five a second. Time is
 * simulated and runs as fast as it is read, unless a speed is asked for.
 */
public final class ReplayLink implements Link {

  private static final long MICROS_A_LINE = 200_000;
  private static final long LARGEST_FILE = 16L << 20;

  private final LinkSpec.Replay spec;
  private final Timebase wall;
  private final List<Chunk> chunks;
  private final boolean plain;
  private final VirtualTime time;

  /**
   * Reads the file.
   *
   * @param wall the clock by which a replay with a speed is paced
   */
  public ReplayLink(LinkSpec.Replay spec, Timebase wall) throws IOException {
    this.spec = spec;
    this.wall = wall;
    Path file = spec.file();
    if (!Files.isReadable(file) || Files.isDirectory(file)) {
      throw new BalanceException(
          BalanceSays.CANNOT_READ.with(file), BalanceSays.CHECK_FILE_NAME.with());
    }
    this.plain = !Capture.is(file);
    if (plain) {
      this.chunks = lines(file);
      this.time = new VirtualTime(wall.instant());
    } else {
      Capture capture = Capture.read(file);
      this.chunks = capture.chunks();
      this.time = new VirtualTime(capture.began().toInstant());
    }
  }

  private static List<Chunk> lines(Path file) throws IOException {
    if (Files.size(file) > LARGEST_FILE) {
      throw new BalanceException(
          BalanceSays.LARGER.with(file, 16), BalanceSays.SHORTER_FILE.with());
    }
    String text = new String(Files.readAllBytes(file), ISO_8859_1);
    List<Chunk> out = new ArrayList<>();
    int from = 0;
    while (from < text.length()) {
      int end = text.indexOf('\n', from);
      String line = end < 0 ? text.substring(from) + "\n" : text.substring(from, end + 1);
      from = end < 0 ? text.length() : end + 1;
      out.add(new Chunk((out.size() + 1) * MICROS_A_LINE, line));
    }
    return out;
  }

  /** True if the file holds plain lines, whose ends are those of text files. */
  public boolean isPlainText() {
    return plain;
  }

  @Override
  public Set<Capability> capabilities() {
    return plain ? Set.of(Capability.STARTS_ON_A_LINE) : Set.of();
  }

  @Override
  public String describe() {
    return spec.toString();
  }

  @Override
  public Timebase time() {
    return time;
  }

  @Override
  public Connection connect() {
    Double speed = spec.options().speed();
    Pacer pacer = speed == null ? Pacer.UNPACED : Pacer.of(wall, time, speed);
    return new ReplayConnection(spec.file().toString(), chunks, time, pacer);
  }
}
