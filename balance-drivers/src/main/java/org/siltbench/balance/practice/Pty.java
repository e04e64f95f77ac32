package org.siltbench.balance.practice;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.LinkException;

/** A pseudo-terminal kept by a {@code socat} child; what is sent here comes out at its link. */
final class Pty implements AutoCloseable {

  private static final long PATIENCE_MILLIS = 5000;

  private final Path link;
  private final Process socat;

  private Pty(Path link, Process socat) {
    this.link = link;
    this.socat = socat;
  }

  static Path temporaryLink() throws IOException {
    return Files.createTempDirectory("siltbench-practice").resolve("balance");
  }

  /** Makes the pseudo-terminal and waits until its link is there. */
  static Pty open(Path link) throws IOException {
    String end = "pty,raw,echo=0,link=" + link;
    Process socat = start(new ProcessBuilder("socat", "-", end));
    Pty pty = new Pty(link, socat);
    try {
      pty.awaitLink();
      return pty;
    } catch (IOException e) {
      pty.close();
      throw e;
    }
  }

  private static Process start(ProcessBuilder command) throws BalanceException {
    try {
      return command.redirectError(ProcessBuilder.Redirect.DISCARD).start();
    } catch (IOException e) {
      throw new BalanceException(
          BalanceSays.NO_SOCAT.with(), BalanceSays.INSTALL_OR_MEMORY.with(), e);
    }
  }

  private void awaitLink() throws IOException {
    long deadline = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(PATIENCE_MILLIS);
    try {
      while (!Files.exists(link)) {
        if (socat.waitFor(5, TimeUnit.MILLISECONDS) || System.nanoTime() - deadline > 0) {
          throw new BalanceException(
              BalanceSays.NO_PTY.with(link), BalanceSays.CHECK_FOLDER.with());
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new LinkException(BalanceSays.INTERRUPTED.with(), e);
    }
  }

  Path link() {
    return link;
  }

  void send(byte[] bytes) throws IOException {
    OutputStream out = socat.getOutputStream();
    out.write(bytes);
    out.flush();
  }

  /** What the reader's side sends to the balance. */
  InputStream received() {
    return socat.getInputStream();
  }

  @Override
  public void close() throws IOException {
    socat.destroy();
    if (Files.isSymbolicLink(link) && !Files.exists(link, LinkOption.NOFOLLOW_LINKS)) {
      Files.deleteIfExists(link);
    }
  }
}
