package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A command loads only what it needs, seen from outside as a process of its own. */
class LeanStartIT {

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"--help", "methods", "plan --every 15m --for 6h", "preweigh --help"})
  void quick_commands_load_no_database_no_paper_no_window(String words) throws Exception {
    Path log = folder.resolve("classes.log");
    Path out = folder.resolve("out");
    List<String> command = OwnProcess.words("-Xlog:class+load:file=" + log);
    command.addAll(List.of(words.split(" ")));
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(out.toFile()).start();
    assertEquals(0, process.waitFor(), () -> read(out));
    assertFalse(read(out).isBlank());
    List<String> loaded = Files.readAllLines(log);
    assertTrue(loaded.stream().anyMatch(line -> line.contains("org.siltbench.station.command")));
    for (String heavy : List.of("org.h2.", "org.apache.pdfbox.", "javafx.", "com.fazecast.")) {
      assertFalse(
          loaded.stream().anyMatch(line -> line.contains("] " + heavy)), heavy + " for " + words);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
