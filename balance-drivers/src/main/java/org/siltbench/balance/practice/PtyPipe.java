package org.siltbench.balance.practice;

import java.io.IOException;
import java.time.Duration;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.link.Connection;
import org.siltbench.balance.link.LineSettings;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.link.SerialLink;
import org.siltbench.balance.link.SpecOptions;

/** A pipe over a real pseudo-terminal, read by the serial link just as a real balance is. */
final class PtyPipe implements Pipe {

  private static final long WAIT_NANOS = Duration.ofSeconds(1).toNanos();

  private final Pty pty;
  private final Connection reader;

  private PtyPipe(Pty pty, Connection reader) {
    this.pty = pty;
    this.reader = reader;
  }

  static PtyPipe open() throws IOException {
    Pty pty = Pty.open(Pty.temporaryLink());
    try {
      LinkSpec.Serial spec =
          new LinkSpec.Serial(pty.link().toString(), LineSettings.DEFAULT, SpecOptions.NONE);
      return new PtyPipe(pty, new SerialLink(spec, Timebase.system()).connect());
    } catch (IOException | RuntimeException e) {
      pty.close();
      throw e;
    }
  }

  @Override
  public void send(byte[] line) throws IOException {
    pty.send(line);
  }

  @Override
  public int receive(byte[] into) throws IOException, InterruptedException {
    return reader.read(into, WAIT_NANOS);
  }

  @Override
  public String where() {
    return reader.where();
  }

  @Override
  public void close() throws IOException {
    try (pty) {
      reader.close();
    }
  }
}
