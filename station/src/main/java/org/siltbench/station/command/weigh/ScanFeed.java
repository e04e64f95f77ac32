package org.siltbench.station.command.weigh;

import java.io.IOException;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.command.Console;

/** Lines of standard input, read beside the balance so that neither waits for the other. */
public final class ScanFeed {

  /** What came: a line, or the end of input. */
  public record Item(String line, boolean end, String trouble) {}

  private static final long WAIT_MILLIS = 20;
  private static final int AHEAD = 10_000;

  private final BlockingQueue<Item> items = new LinkedBlockingQueue<>(AHEAD);

  private ScanFeed() {}

  /** Starts reading. */
  public static ScanFeed of(Console console) {
    ScanFeed feed = new ScanFeed();
    Thread reader = new Thread(() -> feed.read(console), "standard input");
    reader.setDaemon(true);
    reader.start();
    return feed;
  }

  private void read(Console console) {
    try {
      for (String line = console.readLine(); line != null; line = console.readLine()) {
        items.put(new Item(line, false, ""));
      }
      items.put(new Item("", true, ""));
    } catch (IOException e) {
      items.add(new Item("", true, String.valueOf(e.getMessage())));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** The next item if one is there within a moment, else null. The end stays at the end. */
  public @Nullable Item poll() {
    try {
      Item item = items.poll(WAIT_MILLIS, TimeUnit.MILLISECONDS);
      if (item != null && item.end()) {
        items.add(item);
      }
      return item;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return new Item("", true, "interrupted");
    }
  }
}
