package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.station.command.balance.BalanceCommands;

class BalanceCommandsTest {

  private static final String LINES =
      """
      ok,+  0.12345 g
      ok,+  0.12346 g
      ok,-  0.00001 g
      """;

  @TempDir Path home;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String input, String... args) {
    Surroundings around =
        new Surroundings(
            Console.over(
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)), out, err),
            Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC),
            Map.of(),
            home,
            "tester",
            new LabFolders(),
            (spec, formats) -> new Balances(Timebase.system(), formats).open(spec),
            new BalanceCommands().commands());
    return new Program(around).run(args);
  }

  private String replay(String text) throws IOException {
    return "replay:" + Files.writeString(home.resolve("lines.txt"), text);
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  void learn_writes_a_format_that_watch_then_reads_by() throws IOException {
    String spec = replay(LINES);
    assertEquals(
        0, run("", "balance", "learn", "--balance", spec, "--save", "mine", "--yes", "--json"));
    assertTrue(out().contains("\"text\":\"ok,+  0.12345 g\",\"mass_g\":\"0.12345\""), out());
    assertTrue(out().contains("\"unknown\":[\"stable mark"), out());
    out.reset();
    assertEquals(
        0,
        run("", "balance", "watch", "--balance", spec + "?format=mine", "--count", "3", "--json"));
    assertTrue(out().contains("\"mass_g\":\"-0.00001\""), out());
    assertEquals(1, out().lines().count());
  }

  @Test
  void learn_takes_the_lines_of_a_balance_that_types_and_watch_reads_by_them() {
    String typed = LINES.replace("\n", "\n\n") + "done\nyes\n";
    assertEquals(0, run(typed, "balance", "learn", "--balance", "typed", "--save", "keys"));
    assertTrue(err().contains("Then type done."), err());
    assertTrue(out().contains("talks: on its key"), out());
    assertTrue(err().contains("Weigh with: --balance 'typed?format=keys'"), err());
    assertEquals(0, run("ok,-  1.50000 g\n", "balance", "watch", "--balance", "typed?format=keys"));
    assertTrue(out().contains("-1.50000"), out());
  }

  @Test
  void learn_says_when_too_little_was_typed_and_find_shows_the_way_where_there_is_no_port() {
    assertEquals(1, run("ok,+  0.1", "balance", "learn", "--balance", "typed", "--save", "keys"));
    assertTrue(err().contains("Nothing was saved."), err());
    assertEquals(2, run("", "balance", "find", "--balance", "typed"));
    assertTrue(err().contains("siltbench balance learn --balance typed"), err());
  }

  @Test
  void learn_asks_before_it_saves_and_a_no_saves_nothing() throws IOException {
    assertEquals(0, run("no\n", "balance", "learn", "--balance", replay(LINES), "--save", "mine"));
    assertTrue(err().contains("Save it as mine? Type yes."), err());
    try (Stream<Path> files = Files.walk(home)) {
      assertFalse(files.anyMatch(f -> f.toString().endsWith(".lineformat")));
    }
  }

  @Test
  void learn_refuses_lines_that_could_mean_two_masses() throws IOException {
    String spec = replay("1,234 g\n2,345 g\n3,456 g\n");
    assertEquals(1, run("", "balance", "learn", "--balance", spec, "--yes", "--json"));
    assertTrue(out().startsWith("{\"format\":null,\"unknown\":[\"decimal mark"), out());
  }

  @Test
  void watch_prints_readings_and_says_why_a_line_is_not_read() throws IOException {
    String spec = replay("0.1234 g\n12.3\n0.1235 g\n");
    assertEquals(0, run("", "balance", "watch", "--balance", spec));
    assertEquals("0.1234 g\n0.1235 g\n", out());
    assertTrue(err().contains("Not read: 12.3 (the unit is missing, at character 5)"), err());
  }

  @Test
  void watch_ends_with_3_where_nothing_readable_came() throws IOException {
    assertEquals(3, run("", "balance", "watch", "--balance", replay("hello\nworld\n")));
    assertTrue(err().contains("Nothing readable came."), err());
  }

  @Test
  void watch_captures_what_replay_then_reads() throws IOException {
    Path folder = home.resolve("captures");
    assertEquals(
        0,
        run(
            "",
            "balance",
            "watch",
            "--balance",
            "practice?seed=3",
            "--count",
            "5",
            "--capture",
            folder.toString()));
    String first = out();
    out.reset();
    try (Stream<Path> files = Files.list(folder)) {
      Path file = files.findFirst().orElseThrow();
      assertEquals(0, run("", "balance", "watch", "--balance", "replay:" + file));
    }
    assertEquals(first, out());
  }

  @Test
  void a_balance_that_cannot_be_named_is_wrong_use() {
    assertEquals(2, run("", "balance", "watch", "--balance", "usb:1"));
    assertEquals(2, run("", "balance", "watch", "--balance", "practice?unit=lb"));
    assertEquals(2, run("", "balance", "watch", "--balance", "practice", "--json"));
  }

  @Test
  void a_port_that_is_not_there_ends_with_3_and_something_to_do() {
    assertEquals(3, run("", "balance", "watch", "--balance", "serial:/dev/ttyNOWHERE"));
    assertTrue(err().contains("There is no port /dev/ttyNOWHERE."), err());
    assertEquals(3, run("", "balance", "find", "--balance", "serial:/dev/ttyNOWHERE"));
  }

  @Test
  void find_tries_a_link_and_tells_what_it_heard() throws IOException {
    String spec = replay("0.1 g\n0.2 g\n0.3 g\n0.4 g\n0.5 g\n0.6 g\n0.7 g\n");
    assertEquals(0, run("", "balance", "find", "--balance", spec, "--json"));
    assertTrue(out().contains("\"readable\":true"), out());
    assertTrue(out().contains("\"found\":\"replay:"), out());
  }
}
