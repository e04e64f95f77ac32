package org.siltbench.balance.find;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.format.LineReader;
import org.siltbench.balance.link.Connection;
import org.siltbench.balance.link.LineSettings;
import org.siltbench.balance.link.Link;
import org.siltbench.balance.link.LinkSpec;

/**
 * Tries line settings on one link until readable lines come. It only listens: not a byte is sent
 * unless the link text itself says what to ask.
 */
public final class Finder {

  private static final int SILENT_ENOUGH = 4;
  private static final int MOST_BYTES = 16_384;
  private static final int LINES_ENOUGH = 4;
  private static final long LONGEST_SLICE = 500_000_000L;

  /** Makes a link of a link text. */
  public interface Opener {
    /** The link, not yet connected. */
    Link link(LinkSpec spec) throws IOException;
  }

  private final Opener opener;
  private final Duration each;
  private final Consumer<Attempt> heard;
  private final BooleanSupplier stopped;

  /**
   * A finder that listens so long with each setting, and tells what it heard as it goes.
   *
   * @param each longest time to listen with one setting; readable lines end it sooner
   */
  public Finder(Opener opener, Duration each, Consumer<Attempt> heard) {
    this(opener, each, heard, () -> false);
  }

  /**
   * The same, with somebody who may stop it.
   *
   * @param stopped asked several times a second; true ends the search after what was heard so far
   */
  public Finder(Opener opener, Duration each, Consumer<Attempt> heard, BooleanSupplier stopped) {
    this.opener = opener;
    this.each = each;
    this.heard = heard;
    this.stopped = stopped;
  }

  /** The most settings that are tried on one link. */
  public static int mostAttempts(LinkSpec spec) {
    return candidates(spec).size();
  }

  /**
   * Everything that was tried; the last attempt is readable if a setting was found, and there is
   * none if it was stopped at once. A link that stays silent with the first few settings is given
   * up: a wrong setting gives odd bytes, not none.
   */
  public List<Attempt> search(LinkSpec spec) throws IOException, InterruptedException {
    List<Attempt> out = new ArrayList<>();
    for (LinkSpec candidate : candidates(spec)) {
      if (stopped.getAsBoolean()) {
        break;
      }
      Attempt attempt = attempt(candidate);
      out.add(attempt);
      heard.accept(attempt);
      boolean silent = out.size() >= SILENT_ENOUGH && out.stream().allMatch(Attempt::isSilent);
      if (attempt.readable() || silent) {
        break;
      }
    }
    return out;
  }

  private static List<LinkSpec> candidates(LinkSpec spec) {
    List<LinkSpec> out = new ArrayList<>();
    out.add(spec);
    for (LineSettings line : LineSettings.common()) {
      LinkSpec other = with(spec, line);
      if (other != null && !out.contains(other)) {
        out.add(other);
      }
    }
    return out;
  }

  private static @Nullable LinkSpec with(LinkSpec spec, LineSettings line) {
    if (spec instanceof LinkSpec.Serial s) {
      return new LinkSpec.Serial(s.port(), line, s.options());
    } else if (spec instanceof LinkSpec.Tcp t && t.rfc2217() != null) {
      return new LinkSpec.Tcp(t.host(), t.port(), line, t.options());
    }
    return null;
  }

  private static String settings(LinkSpec spec) {
    if (spec instanceof LinkSpec.Serial s) {
      return s.line().shortText();
    }
    LineSettings line = spec instanceof LinkSpec.Tcp t ? t.rfc2217() : null;
    return line == null ? "" : line.shortText();
  }

  private Attempt attempt(LinkSpec spec) throws IOException, InterruptedException {
    Link link = opener.link(spec);
    String bytes;
    try (Connection connection = link.connect()) {
      bytes = listen(connection, link.time(), spec.options().ask());
    }
    return new Attempt(
        spec,
        settings(spec),
        bytes.length(),
        Hearing.odd(bytes),
        Hearing.lines(bytes),
        Hearing.readable(bytes),
        bytes);
  }

  private String listen(Connection connection, Timebase time, @Nullable String ask)
      throws IOException, InterruptedException {
    StringBuilder out = new StringBuilder();
    byte[] chunk = new byte[LineReader.MAX_CHUNK];
    long slice = Math.min(each.toNanos() / 4, LONGEST_SLICE);
    long deadline = time.nanos() + each.toNanos();
    while (time.nanos() - deadline < 0 && out.length() < MOST_BYTES && !isEnough(out)) {
      if (stopped.getAsBoolean()) {
        break;
      }
      if (ask != null && !ask.isEmpty()) {
        connection.write(ask.getBytes(ISO_8859_1));
      }
      int count = connection.read(chunk, Math.min(slice, deadline - time.nanos()));
      if (count == Connection.END) {
        break;
      }
      out.append(new String(chunk, 0, count, ISO_8859_1));
    }
    return out.toString();
  }

  private static boolean isEnough(CharSequence heard) {
    String bytes = heard.toString();
    return Hearing.lines(bytes).size() >= LINES_ENOUGH && Hearing.readable(bytes);
  }
}
