package org.siltbench.demo.robot;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/** Bytes in, whole lines out, as they are written. */
final class Lines extends OutputStream {

  private final ByteArrayOutputStream line = new ByteArrayOutputStream();
  private final Consumer<String> reader;

  Lines(Consumer<String> reader) {
    this.reader = reader;
  }

  @Override
  public void write(int b) {
    if (b == '\n') {
      reader.accept(line.toString(StandardCharsets.UTF_8));
      line.reset();
    } else {
      line.write(b);
    }
  }
}
