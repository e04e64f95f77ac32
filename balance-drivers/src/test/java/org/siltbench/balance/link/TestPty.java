package org.siltbench.balance.link;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** A real pseudo-terminal kept by socat; it can be pulled out and put back under its name. */
public final class TestPty implements AutoCloseable {

  private final Path link;
  private Process socat;

  public TestPty(Path link) throws IOException, InterruptedException {
    this.link = link;
    plugIn();
  }

  public Path link() {
    return link;
  }

  public void plugIn() throws IOException, InterruptedException {
    socat =
        new ProcessBuilder("socat", "-", "pty,raw,echo=0,link=" + link)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    while (!Files.exists(link)) {
      if (socat.waitFor(2, TimeUnit.MILLISECONDS)) {
        throw new IOException("socat ended with " + socat.exitValue());
      }
    }
  }

  /** Pulls the cable: the pseudo-terminal is gone when this returns. */
  public void pullOut() throws InterruptedException, IOException {
    socat.destroyForcibly().waitFor();
    Files.deleteIfExists(link);
  }

  public void send(byte[] bytes) throws IOException {
    socat.getOutputStream().write(bytes);
    socat.getOutputStream().flush();
  }

  public InputStream received() {
    return socat.getInputStream();
  }

  @Override
  public void close() throws IOException, InterruptedException {
    pullOut();
  }
}
