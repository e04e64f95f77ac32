package org.siltbench.balance;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.format.LineParser;
import org.siltbench.balance.format.LineReader;
import org.siltbench.balance.link.Connection;
import org.siltbench.balance.link.Link;
import org.siltbench.balance.link.Link.Capability;
import org.siltbench.calc.reason.Reason;

/** Readings from a link: cuts lines, reads them by a format, asks where told to, reconnects. */
final class LineSource implements ReadingSource {

  private static final Duration BETWEEN_TRIES = Duration.ofMillis(200);

  private static final long LONGEST_WAIT_S = 86_400;

  private final Link link;
  private final LineParser parser;
  private final LineReader lines;
  private final @Nullable Asker asker;
  private final Tap tap;
  private final byte[] chunk = new byte[LineReader.MAX_CHUNK];
  private final CountDownLatch closed = new CountDownLatch(1);
  private volatile @Nullable Connection connection;
  private boolean ended;
  private long arrived;
  private Instant arrivedAt;

  LineSource(Link link, LineFormat format, @Nullable Asker asker, Tap tap) throws IOException {
    this.link = link;
    this.parser = format.parser();
    this.lines =
        new LineReader(format.ends(), link.capabilities().contains(Capability.STARTS_ON_A_LINE));
    this.asker = asker;
    this.tap = tap;
    this.arrivedAt = link.time().instant();
    this.connection = link.connect();
  }

  @Override
  public SourceEvent next(Duration atMost) throws InterruptedException {
    long deadline =
        now()
            + Math.min(atMost.toSeconds(), LONGEST_WAIT_S) * 1_000_000_000L
            + atMost.toNanosPart();
    while (!isClosed() && !ended) {
      SourceEvent event = waiting();
      if (event == null) {
        event = connection == null ? comeBack(deadline) : take(deadline);
      }
      if (event != null) {
        return event;
      }
      if (now() - deadline >= 0) {
        return new SourceEvent.Quiet(now(), link.time().instant());
      }
    }
    BalanceSays why = ended ? BalanceSays.NO_MORE_LINES : BalanceSays.SOURCE_CLOSED;
    return new SourceEvent.Ended(why.with(), now(), link.time().instant());
  }

  private long now() {
    return link.time().nanos();
  }

  private boolean isClosed() {
    return closed.getCount() == 0;
  }

  /** The next event from bytes that are here already. */
  private @Nullable SourceEvent waiting() {
    for (LineReader.Found found = lines.next(); ; found = lines.next()) {
      switch (found) {
        case NOTHING -> {
          return null;
        }
        case TOO_LONG -> {
          return unreadable("", BalanceSays.LONG_LINE.with(LineReader.MAX_LINE));
        }
        case FIRST_REST -> {
          if (isSentOnKey()) {
            return unreadable(lineText(), BalanceSays.HALF_LINE.with());
          }
        }
        case LINE -> {
          SourceEvent event = read();
          if (event != null) {
            return event;
          }
        }
      }
    }
  }

  private boolean isSentOnKey() {
    return parser.format().talk().how() == LineFormat.Talk.How.ON_KEY;
  }

  private String lineText() {
    return new String(lines.bytes(), lines.start(), lines.end() - lines.start(), ISO_8859_1);
  }

  private @Nullable SourceEvent read() {
    Reading reading = parser.parse(lines.bytes(), lines.start(), lines.end(), arrived, arrivedAt);
    if (reading != null) {
      return new SourceEvent.Read(reading);
    }
    Reason why = parser.reason();
    return why == null ? null : unreadable(lineText(), why);
  }

  private SourceEvent unreadable(String raw, Reason why) {
    return new SourceEvent.Unreadable(raw, why, arrived, arrivedAt);
  }

  /** Waits for bytes; an event only if the link is lost or ended. */
  private @Nullable SourceEvent take(long deadline) throws InterruptedException {
    Connection live = connection;
    if (live == null) {
      return null;
    }
    try {
      long wait = asker == null ? deadline - now() : asker.ask(live, now(), deadline);
      int count = live.read(chunk, Math.max(0, wait));
      if (count == Connection.END) {
        ended = true;
      } else if (count > 0) {
        arrived = now();
        arrivedAt = link.time().instant();
        tap.bytes(chunk, count, arrived);
        lines.accept(chunk, count);
      }
      return null;
    } catch (IOException e) {
      return lost(live, e);
    }
  }

  private @Nullable SourceEvent lost(Connection live, IOException why) {
    if (isClosed()) {
      return null;
    }
    connection = null;
    lines.reset();
    Reason told = Reason.of(why);
    try {
      live.close();
    } catch (IOException e) {
      told = BalanceSays.CLOSING_FAILED.with(told, e);
    }
    ended = !link.capabilities().contains(Capability.COMES_BACK);
    return new SourceEvent.Lost(told, now(), link.time().instant());
  }

  private @Nullable SourceEvent comeBack(long deadline) throws InterruptedException {
    try {
      Connection live = link.connect();
      connection = live;
      if (isClosed()) {
        live.close();
        return null;
      }
      return new SourceEvent.Back(live.where(), now(), link.time().instant());
    } catch (IOException stillAway) {
      // said once as Lost; trying again is what is left
      long wait = Math.min(BETWEEN_TRIES.toNanos(), Math.max(0, deadline - now()));
      boolean unused = closed.await(wait, TimeUnit.NANOSECONDS);
      return null;
    }
  }

  @Override
  public String describe() {
    return link.describe();
  }

  @Override
  public boolean singly() {
    return isSentOnKey();
  }

  @Override
  public String formatName() {
    return parser.format().name();
  }

  @Override
  public void close() throws IOException {
    closed.countDown();
    Connection live = connection;
    if (live != null) {
      live.close();
    }
  }
}
