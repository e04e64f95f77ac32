package org.siltbench.station.work.scan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.link.Connection;
import org.siltbench.balance.link.Link;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.said.Words;

/**
 * A scanner on a port of its own: what it sends up to a line end is one scan. A pulled cable is
 * tried again until it is back.
 */
public final class SerialScanner implements AutoCloseable {

  /** Opens its port. */
  public interface Opening {
    /** Opens it. */
    Link open() throws IOException;
  }

  private static final long STEP_NANOS = Duration.ofMillis(200).toNanos();
  private static final long BETWEEN_TRIES_MILLIS = 2000;
  private static final int MOST = 4096;

  private final Opening opening;
  private final Consumer<String> scans;
  private final Consumer<Words> trouble;
  private final StringBuilder line = new StringBuilder();
  private volatile boolean closed;
  private volatile @Nullable Thread reader;

  /**
   * A scanner, not yet opened.
   *
   * @param scans takes each scan
   * @param trouble told why it is away, once each time; empty when it is back
   */
  public SerialScanner(Opening opening, Consumer<String> scans, Consumer<Words> trouble) {
    this.opening = opening;
    this.scans = scans;
    this.trouble = trouble;
  }

  /** Reads until closed, on a thread of the executor. */
  public void start(Executor thread) {
    thread.execute(
        () -> {
          reader = Thread.currentThread();
          try {
            while (!closed) {
              listen();
              Thread.sleep(BETWEEN_TRIES_MILLIS);
            }
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
        });
  }

  private void listen() throws InterruptedException {
    line.setLength(0);
    try (Connection port = opening.open().connect()) {
      trouble.accept(Words.none());
      byte[] bytes = new byte[256];
      int count = 0;
      while (!closed && count != Connection.END) {
        count = port.read(bytes, STEP_NANOS);
        if (count > 0) {
          take(new String(bytes, 0, count, StandardCharsets.ISO_8859_1));
        }
      }
    } catch (IOException | IllegalArgumentException e) {
      trouble.accept(Elsewhere.words(e));
    }
  }

  private void take(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\r' || c == '\n') {
        end();
      } else if (line.length() < MOST) {
        line.append(c);
      }
    }
  }

  private void end() {
    String scan = line.toString().strip();
    line.setLength(0);
    if (!scan.isEmpty()) {
      scans.accept(scan);
    }
  }

  @Override
  public void close() {
    closed = true;
    Thread thread = reader;
    if (thread != null) {
      thread.interrupt();
    }
  }
}
