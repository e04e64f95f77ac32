package org.siltbench.balance.practice;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.LinkException;

/**
 * A pseudo-terminal that sends nothing until somebody opens it, and is made anew when they leave: a
 * reader never finds old lines waiting, as on a real cable.
 */
final class PtyOutlet implements Outlet {

  private static final String CONNECTED = "starting data transfer loop";

  private final Path link;
  private Process socat;
  private BufferedReader news;
  private boolean heard;

  PtyOutlet(Path link) throws IOException {
    this.link = link.toAbsolutePath();
    if (Files.exists(link, LinkOption.NOFOLLOW_LINKS) && !Files.isSymbolicLink(link)) {
      throw new BalanceException(
          BalanceSays.LINK_IS_FILE.with(link), BalanceSays.ANOTHER_LINK.with());
    }
    this.socat = start();
    this.news = news(socat);
    awaitLink();
  }

  private Process start() throws BalanceException {
    String end = "pty,raw,echo=0,wait-slave,pty-interval=0.02,link=" + link;
    try {
      return new ProcessBuilder("socat", "-d", "-d", "-t", "0", "-", end).start();
    } catch (IOException e) {
      throw new BalanceException(BalanceSays.NO_SOCAT.with(), BalanceSays.INSTALL_OR_TCP.with(), e);
    }
  }

  private static BufferedReader news(Process process) {
    return process.errorReader(UTF_8);
  }

  private void awaitLink() throws IOException {
    long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(5);
    try {
      while (!Files.exists(link)) {
        if (socat.waitFor(2, TimeUnit.MILLISECONDS) || System.nanoTime() - deadline > 0) {
          throw new BalanceException(
              BalanceSays.NO_PTY.with(link), BalanceSays.CHECK_FOLDER.with());
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new LinkException(BalanceSays.INTERRUPTED.with(), e);
    }
  }

  private boolean isHeard() throws IOException {
    if (!socat.isAlive()) {
      socat = start();
      news.close();
      news = news(socat);
      heard = false;
      awaitLink();
    }
    while (news.ready()) {
      String line = news.readLine();
      heard |= line != null && line.contains(CONNECTED);
    }
    return heard;
  }

  @Override
  public void send(byte[] line) throws IOException {
    if (!isHeard()) {
      return;
    }
    try {
      socat.getOutputStream().write(line);
      socat.getOutputStream().flush();
    } catch (IOException gone) {
      heard = false; // the reader left; the pseudo-terminal is made anew for the next line
    }
  }

  @Override
  public boolean wasAsked() throws IOException {
    if (!isHeard()) {
      return false;
    }
    InputStream in = socat.getInputStream();
    int waiting = in.available();
    return waiting > 0 && in.skip(waiting) > 0;
  }

  @Override
  public String linkText() {
    return "serial:" + link;
  }

  @Override
  public void close() throws IOException {
    socat.destroy();
    try {
      boolean unused = socat.waitFor(1, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    news.close();
  }
}
