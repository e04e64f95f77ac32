package org.siltbench.demo.bench.all;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.siltbench.station.json.NotJson;

/** The runs so far, one a line, oldest first. */
record History(List<Figures> runs) {

  History {
    runs = List.copyOf(runs);
  }

  /** A file that is not there holds no runs. */
  static History read(Path file) throws IOException {
    List<Figures> runs = new ArrayList<>();
    if (Files.exists(file)) {
      for (String line : Files.readAllLines(file)) {
        try {
          runs.add(Figures.of(line));
        } catch (NotJson | NumberFormatException e) {
          throw new IOException(
              file.getFileName() + ", line " + (runs.size() + 1) + ", cannot be read", e);
        }
      }
    }
    return new History(runs);
  }

  /** Adds a run at the end of the file and here. */
  History add(Path file, Figures run) throws IOException {
    Files.writeString(
        file, run.line() + '\n', StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    List<Figures> more = new ArrayList<>(runs);
    more.add(run);
    return new History(more);
  }
}
