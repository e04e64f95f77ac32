package org.siltbench.balance.learn;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.siltbench.balance.format.LineReader;
import org.siltbench.balance.link.Connection;
import org.siltbench.balance.link.Link;
import org.siltbench.balance.link.Link.Capability;
import org.siltbench.balance.link.SpecOptions;

/** Captures samples for the learner from a live link or a recording. */
public final class Listener implements AutoCloseable {

  private static final int MOST_BYTES = 1 << 20;
  private static final long LONGEST_SLICE = 250_000_000L;
  private static final long BREATH = 150_000_000L;

  private final Link link;
  private final Connection connection;
  private final SpecOptions options;
  private final Consumer<String> eye;
  private boolean fresh = true;
  private boolean ended;
  private boolean asked;
  private long lastAsked;
  private List<Long> bursts = new ArrayList<>();
  private long lastHeard;

  /**
   * Connects.
   *
   * @param eye sees the bytes as they come, one character each
   */
  public Listener(Link link, SpecOptions options, Consumer<String> eye) throws IOException {
    this.link = link;
    this.options = options;
    this.eye = eye;
    this.connection = link.connect();
  }

  /** Listens for so long, or to the end of a recording. */
  public Sample listen(Situation situation, Duration time)
      throws IOException, InterruptedException {
    return listen(situation, time, () -> false);
  }

  /**
   * The same, with somebody who may stop it.
   *
   * @param stopped asked several times a second; true ends the listening with what has come so far
   */
  public Sample listen(Situation situation, Duration time, BooleanSupplier stopped)
      throws IOException, InterruptedException {
    boolean startsOnLine = fresh && link.capabilities().contains(Capability.STARTS_ON_A_LINE);
    fresh = false;
    StringBuilder out = new StringBuilder();
    byte[] chunk = new byte[LineReader.MAX_CHUNK];
    long began = link.time().nanos();
    long left = time.toNanos();
    bursts = new ArrayList<>();
    while (left > 0 && !ended && out.length() < MOST_BYTES && !stopped.getAsBoolean()) {
      int count = connection.read(chunk, Math.min(left, ask(link.time().nanos())));
      ended = count == Connection.END;
      long now = link.time().nanos();
      if (count > 0) {
        String text = new String(chunk, 0, count, ISO_8859_1);
        out.append(text);
        note(now - began);
        eye.accept(text);
      }
      left = time.toNanos() - (now - began);
    }
    Pace pace = new Pace(bursts, lastHeard, link.time().nanos() - began);
    return new Sample(situation, out.toString(), startsOnLine, pace);
  }

  private void note(long since) {
    if (bursts.isEmpty() || since - lastHeard > BREATH) {
      bursts.add(since);
    }
    lastHeard = since;
  }

  /** Asks if it is time to, and says how long to wait before the next look. */
  private long ask(long now) throws IOException {
    String text = options.ask();
    if (text == null || text.isEmpty()) {
      return LONGEST_SLICE;
    }
    if (!asked || now - lastAsked >= options.every().toNanos()) {
      connection.write(text.getBytes(ISO_8859_1));
      asked = true;
      lastAsked = now;
    }
    return Math.min(LONGEST_SLICE, lastAsked + options.every().toNanos() - now);
  }

  @Override
  public void close() throws IOException {
    connection.close();
  }
}
