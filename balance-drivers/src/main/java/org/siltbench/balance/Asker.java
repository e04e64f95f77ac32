package org.siltbench.balance;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.time.Duration;
import org.siltbench.balance.link.Connection;

/** Asks a balance for a line at a set rate, however fast or slow it answers. */
final class Asker {

  private final byte[] question;
  private final long everyNanos;
  private boolean asked;
  private long lastAsked;

  Asker(String text, Duration every) {
    this.question = text.getBytes(ISO_8859_1);
    this.everyNanos = every.toNanos();
  }

  /** Asks if it is time to, and says how long to wait for bytes before asking again. */
  long ask(Connection connection, long now, long deadline) throws IOException {
    if (!asked || now - lastAsked >= everyNanos) {
      connection.write(question);
      asked = true;
      lastAsked = now;
    }
    return Math.min(deadline - now, lastAsked + everyNanos - now);
  }
}
