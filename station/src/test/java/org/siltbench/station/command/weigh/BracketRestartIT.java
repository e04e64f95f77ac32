package org.siltbench.station.command.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.OwnProcess;
import org.siltbench.station.json.Json;
import org.siltbench.station.work.method.MethodBook;

/**
 * A bracketing check that is due stays due for the next process: whoever starts the command again
 * weighs nothing before it.
 */
@Timeout(240)
class BracketRestartIT {

  private static final String BALANCE = "practice?seed=3&speed=50";
  private static final int EVERY = 3;

  @TempDir Path folder;
  private CommandLab lab;

  /** One run of {@code preweigh} in a process of its own. */
  private record Run(int status, int weighed, String stopped, String messages) {}

  @BeforeEach
  void setUp() throws Exception {
    lab = new CommandLab(folder.resolve("lab"));
    lab.ok("lab", "new", "--practice");
    Files.writeString(
        Files.createDirectories(lab.folder().resolve("methods")).resolve("strict.method"),
        MethodBook.of(folder)
            .get("epa-160.2")
            .text()
            .replace("epa-160.2", "strict")
            .replaceFirst("check_every = *20", "check_every = " + EVERY)
            .replaceFirst("missing_check = *warn", "missing_check = stop"));
    lab.ok("batch", "new", "--name", "A", "--lot", "L", "--method", "strict", "--count", "12");
    check();
  }

  private void check() {
    lab.ok("checkweight", "--balance", BALANCE, "--weight", "100mg");
  }

  private Run preweigh(String... more) throws Exception {
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    List<String> words = OwnProcess.words();
    words.addAll(List.of("preweigh", "--batch", "A", "--balance", BALANCE, "--json"));
    words.addAll(List.of("--lab", lab.folder().toString()));
    words.addAll(List.of(more));
    Process process =
        new ProcessBuilder(words).redirectOutput(out.toFile()).redirectError(err.toFile()).start();
    try {
      assertTrue(process.waitFor(100, TimeUnit.SECONDS), () -> text(err));
    } finally {
      process.destroyForcibly();
    }
    Map<String, ?> said = Json.object(text(out));
    return new Run(
        process.exitValue(),
        ((List<?>) said.get("weighings")).size(),
        String.valueOf(said.get("stopped")),
        text(err));
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void starting_again_in_another_process_weighs_nothing_before_the_check() throws Exception {
    Run first = preweigh("--repeat", "0");
    assertEquals(EVERY, first.weighed(), first.messages());
    assertEquals(1, first.status(), first.messages());
    assertTrue(first.stopped().contains("bracketing check is due"), first.stopped());
    for (int again = 0; again < 2; again++) {
      Run next = preweigh("--repeat", "0");
      assertEquals(0, next.weighed(), next.messages());
      assertEquals(1, next.status(), next.messages());
      assertTrue(next.stopped().contains("3 weighings"), next.stopped());
    }
    check();
    assertEquals(EVERY, preweigh("--repeat", "0").weighed(), "the check begins the count anew");
  }

  @Test
  void what_one_process_weighed_counts_for_the_next_and_a_supervisor_may_say_to_go_on()
      throws Exception {
    Run first = preweigh("--repeat", "0", "--count", "2");
    assertEquals(0, first.status(), first.messages());
    assertEquals(2, first.weighed());
    Run second = preweigh("--repeat", "0", "--count", "2");
    assertEquals(1, second.weighed(), second.messages());
    assertEquals(1, second.status(), second.messages());
    String[] on = {"checkweight", "--balance", BALANCE, "--override", "--reason", "weight cleaned"};
    lab.ok(on);
    Run third = preweigh("--repeat", "0");
    assertEquals(EVERY, third.weighed(), third.messages());
    assertEquals(1, third.status(), "due again under the word");
    assertTrue(third.messages().contains("A bracketing check was due."), third.messages());
    assertEquals(0, preweigh("--repeat", "0").weighed(), "and stays due");
  }

  @Test
  void a_weight_at_hand_is_asked_for_at_once_and_the_run_goes_on() throws Exception {
    assertEquals(EVERY, preweigh("--repeat", "0").weighed());
    Run with = preweigh("--repeat", "0", "--weight", "100mg", "--count", "4");
    assertEquals(4, with.weighed(), with.messages());
    assertEquals(0, with.status(), with.messages());
  }
}
