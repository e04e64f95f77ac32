package org.siltbench.station.command.weigh;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * A balance that is another process: socat keeps a pseudo-terminal and writes into it the lines
 * that this feed sends at a steady rate. The displayed digits are exactly those that were set.
 */
public final class PtyFeed implements AutoCloseable {

  private final Path link;
  private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor();
  private volatile String line;
  private volatile Process socat;

  public PtyFeed(Path link, int everyMillis, String first)
      throws IOException, InterruptedException {
    this.link = link;
    this.line = first;
    this.socat = plugged();
    clock.scheduleAtFixedRate(this::send, 0, everyMillis, TimeUnit.MILLISECONDS);
  }

  public String spec() {
    return "serial:" + link;
  }

  /** What the display shows from now on. */
  public void show(String text) {
    line = text;
  }

  private Process plugged() throws IOException, InterruptedException {
    Process started =
        new ProcessBuilder("socat", "-", "pty,raw,echo=0,link=" + link)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    while (!Files.exists(link)) {
      if (started.waitFor(2, TimeUnit.MILLISECONDS)) {
        throw new IOException("socat ended with " + started.exitValue());
      }
    }
    return started;
  }

  public void plugIn() throws IOException, InterruptedException {
    socat = plugged();
  }

  public void pullOut() throws IOException, InterruptedException {
    socat.destroyForcibly().waitFor();
    Files.deleteIfExists(link);
  }

  private void send() {
    try {
      OutputStream out = socat.getOutputStream();
      out.write((line + "\r\n").getBytes(StandardCharsets.US_ASCII));
      out.flush();
    } catch (IOException pulled) {
      // the cable is out: a balance goes on sending into nothing
    }
  }

  @Override
  public void close() throws IOException, InterruptedException {
    clock.shutdownNow();
    pullOut();
  }
}
