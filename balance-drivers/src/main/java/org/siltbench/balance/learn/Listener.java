package org.siltbench.balance.learn;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.time.Duration;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.format.LineReader;
import org.siltbench.balance.link.Connection;
import org.siltbench.balance.link.Link;
import org.siltbench.balance.link.Link.Capability;
import org.siltbench.balance.link.SpecOptions;

/** Captures samples for the learner from a live link or a recording. */
public final class Listener implements AutoCloseable {

  private static final int MOST_BYTES = 1 << 20;

  private final Link link;
  private final Connection connection;
  private final SpecOptions options;
  private final Consumer<String> eye;
  private boolean fresh = true;
  private boolean ended;

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
    boolean startsOnLine = fresh && link.capabilities().contains(Capability.STARTS_ON_A_LINE);
    fresh = false;
    StringBuilder out = new StringBuilder();
    byte[] chunk = new byte[LineReader.MAX_CHUNK];
    long deadline = link.time().nanos() + time.toNanos();
    long left = time.toNanos();
    while (left > 0 && !ended && out.length() < MOST_BYTES) {
      ask(options.ask());
      int count = connection.read(chunk, Math.min(left, options.every().toNanos()));
      ended = count == Connection.END;
      if (count > 0) {
        String text = new String(chunk, 0, count, ISO_8859_1);
        out.append(text);
        eye.accept(text);
      }
      left = deadline - link.time().nanos();
    }
    return new Sample(situation, out.toString(), startsOnLine);
  }

  private void ask(@Nullable String text) throws IOException {
    if (text != null && !text.isEmpty()) {
      connection.write(text.getBytes(ISO_8859_1));
    }
  }

  @Override
  public void close() throws IOException {
    connection.close();
  }
}
