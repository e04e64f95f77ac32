package org.siltbench.labels.label;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.siltbench.labels.AlderFork;
import org.siltbench.labels.Papers;

/** Labels drawn to a file that goes away. */
record Drawn(Path pdf) implements AutoCloseable {

  static Drawn of(LabelRun run) throws IOException {
    Path pdf = Files.createTempFile("labels", ".pdf");
    try (OutputStream out = Files.newOutputStream(pdf)) {
      Papers.labels(run, AlderFork.imprint(), out);
    }
    return new Drawn(pdf);
  }

  @Override
  public void close() throws IOException {
    Files.delete(pdf);
  }
}
