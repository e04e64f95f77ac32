package org.siltbench.station.command;

import java.io.IOException;
import org.siltbench.balance.TypedReadings;

/**
 * Hands the lines of standard input to a balance that types like a keyboard. Lines that somebody
 * else takes, such as scanned bags, are his.
 */
final class TypedFeed {

  private final Console console;
  private final TypedReadings balance;
  private final TypedLines others;

  private TypedFeed(Console console, TypedReadings balance, TypedLines others) {
    this.console = console;
    this.balance = balance;
    this.others = others;
  }

  static void start(Console console, TypedReadings balance, TypedLines others) {
    TypedFeed feed = new TypedFeed(console, balance, others);
    Thread reader = new Thread(feed::read, "typed lines");
    reader.setDaemon(true);
    reader.start();
  }

  private void read() {
    try {
      for (String line = console.readLine(); line != null; line = console.readLine()) {
        if (!line.isBlank() && !others.takes(line)) {
          hand(line);
        }
      }
    } catch (IOException e) {
      console.message("Standard input cannot be read: " + e.getMessage() + ".");
    }
    others.end();
    balance.end();
  }

  private void hand(String line) {
    if (!balance.type(line)) {
      console.message("Not taken: a line is too long, or too many wait. Type it again.");
    }
  }
}
