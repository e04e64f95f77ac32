package org.siltbench.balance;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.format.LineParser;
import org.siltbench.balance.format.LineReader;
import org.siltbench.calc.reason.Reason;

/**
 * Readings from a balance that types like a keyboard: whoever owns the text input hands each whole
 * line in. Such a line has no time of its own and usually no stable mark; a line typed between two
 * weighings cannot be told from one that belongs to the next.
 */
public final class TypedReadings implements ReadingSource {

  private static final int MOST_WAITING = 100;

  /** A line and when it was handed in. */
  private record Typed(String text, long nanos, Instant at) {}

  private final LineParser parser;
  private final Timebase time;
  private final BlockingQueue<Typed> waiting = new ArrayBlockingQueue<>(MOST_WAITING);
  private volatile boolean closed;
  private volatile boolean complete;

  /** Lines in a format, timed by the given clock as they are handed in. */
  public TypedReadings(LineFormat format, Timebase time) {
    this.parser = format.parser();
    this.time = time;
  }

  /**
   * Hands a whole line in; from any thread.
   *
   * @return false if it was not taken: too long, or too many wait to be read
   */
  public boolean type(String line) {
    boolean fits = line.length() <= LineReader.MAX_LINE && !closed;
    return fits && waiting.offer(new Typed(line, time.nanos(), time.instant()));
  }

  /** No more lines will be handed in; those that wait are still read. */
  public void end() {
    complete = true;
  }

  @Override
  public boolean singly() {
    return true;
  }

  @Override
  public SourceEvent next(Duration atMost) throws InterruptedException {
    long deadline =
        time.nanos()
            + TimeUnit.SECONDS.toNanos(Math.min(atMost.toSeconds(), 86_400))
            + atMost.toNanosPart();
    while (!closed) {
      long left = deadline - time.nanos();
      Typed line = waiting.poll(Math.max(0, Math.min(left, 100_000_000L)), TimeUnit.NANOSECONDS);
      SourceEvent event = line == null ? null : read(line);
      if (event != null) {
        return event;
      }
      if (line == null && complete && waiting.isEmpty()) {
        return new SourceEvent.Ended(BalanceSays.INPUT_ENDED.with(), time.nanos(), time.instant());
      }
      if (left <= 0) {
        return new SourceEvent.Quiet(time.nanos(), time.instant());
      }
    }
    return new SourceEvent.Ended(BalanceSays.SOURCE_CLOSED.with(), time.nanos(), time.instant());
  }

  private @Nullable SourceEvent read(Typed line) {
    byte[] bytes = line.text().getBytes(ISO_8859_1);
    Reading reading = parser.parse(bytes, 0, bytes.length, line.nanos(), line.at());
    if (reading != null) {
      return new SourceEvent.Read(reading);
    }
    Reason why = parser.reason();
    return why == null
        ? null
        : new SourceEvent.Unreadable(line.text(), why, line.nanos(), line.at());
  }

  @Override
  public String describe() {
    return "typed";
  }

  @Override
  public String formatName() {
    return parser.format().name();
  }

  @Override
  public void close() {
    closed = true;
  }
}
