package org.siltbench.demo.bench.window;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** A screen in memory for the processes of a measure. */
final class Screen implements AutoCloseable {

  private final Process server;
  private final String display;

  private Screen(Process server, String display) {
    this.server = server;
    this.display = display;
  }

  static Screen open() throws IOException {
    Process server =
        new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1366x768x24")
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    BufferedReader said = server.inputReader(StandardCharsets.US_ASCII);
    String number = said.readLine();
    if (number == null) {
      throw new IOException("Xvfb did not start: install it (apt-get install xvfb)");
    }
    return new Screen(server, ":" + number.strip());
  }

  String display() {
    return display;
  }

  @Override
  public void close() {
    server.destroy();
  }
}
