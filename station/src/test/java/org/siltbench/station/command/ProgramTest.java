package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;
import picocli.CommandLine.Option;

class ProgramTest {

  @TempDir Path home;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(Task task, String... args) {
    return run(
        List.of(
            new CommandEntry("try", "tries", () -> task),
            new CommandEntry("net cast", "casts", () -> task),
            new CommandEntry("net haul", "hauls", () -> task)),
        args);
  }

  private int run(List<CommandEntry> offered, String... args) {
    Surroundings around =
        new Surroundings(
            Console.over(InputStream.nullInputStream(), out, err),
            Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC),
            Map.of(),
            home,
            "tester",
            new LabFolders(),
            (spec, formats) -> {
              throw new IOException("no balance here");
            },
            offered);
    return new Program(around).run(args);
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }

  static final class Counting implements Task {
    @Option(names = "--count")
    int count = 1;

    @Override
    public int run(Session session) {
      Map<String, Object> document = new LinkedHashMap<>();
      document.put("count", count);
      document.put("mass_g", "0.10000");
      document.put("none", null);
      document.put("u", Double.NaN);
      session.fact("count " + count);
      session.announce("done", Map.of("event", "done"));
      session.document(document);
      return 0;
    }
  }

  @Test
  void facts_go_to_standard_output() {
    assertEquals(0, run(new Counting(), "try", "--count", "3"));
    assertEquals("count 3\ndone\n", out());
    assertEquals("", err());
  }

  @Test
  void json_is_one_document_and_nothing_else_on_standard_output() {
    assertEquals(0, run(new Counting(), "try", "--json", "--events"));
    assertEquals("{\"count\":1,\"mass_g\":\"0.10000\",\"none\":null,\"u\":null}\n", out());
    assertEquals("{\"event\":\"done\"}\n", err());
  }

  @Test
  void a_refusal_ends_with_1_wrong_use_with_2_outside_with_3() {
    assertEquals(
        1,
        run(
            session -> {
              throw new Problem.Refused("Wrong bag.", "Nothing is recorded.", "Take the other.");
            },
            "try"));
    assertTrue(err().contains("Wrong bag.\nNothing is recorded.\nTake the other.\n"), err());
    assertEquals(
        2,
        run(
            session -> {
              throw new Problem.WrongUse("No.", "So.");
            },
            "try"));
    assertEquals(
        3,
        run(
            session -> {
              throw new IOException("gone");
            },
            "try"));
  }

  @Test
  void a_wrong_option_ends_with_2_and_points_to_help() {
    assertEquals(2, run(new Counting(), "try", "--cuont", "3"));
    assertTrue(err().contains("--cuont"), err());
    assertTrue(err().contains("siltbench try --help"), err());
    assertEquals("", out());
  }

  @Test
  void something_unexpected_ends_with_3_and_keeps_the_details_in_a_file() throws IOException {
    Path lab = Files.createDirectory(home.resolve("lab"));
    Task broken =
        session -> {
          throw new IllegalStateException("a fault of ours");
        };
    assertEquals(3, run(broken, "try", "--lab", lab.toString()));
    assertFalse(err().contains("\tat "), err());
    try (Stream<Path> files = Files.list(lab.resolve("log"))) {
      String kept = Files.readString(files.findFirst().orElseThrow());
      assertTrue(kept.contains("a fault of ours") && kept.contains("\tat "), kept);
    }
  }

  @Test
  void a_command_of_two_words_is_found_and_its_group_is_listed() {
    assertEquals(0, run(new Counting(), "net", "haul"));
    assertEquals(2, run(new Counting(), "net"));
    assertTrue(err().contains("net cast") && err().contains("net haul"), err());
    assertEquals(0, run(new Counting(), "net", "--help"));
    assertTrue(out().contains("net cast"), out());
  }

  @Test
  void an_unknown_command_ends_with_2() {
    assertEquals(2, run(new Counting(), "fly"));
    assertTrue(err().contains("\"fly\""), err());
  }

  @Test
  void no_words_without_a_window_say_what_to_use() {
    assertEquals(2, run(new Counting()));
    assertTrue(err().contains("--help"), err());
  }

  @Test
  void options_alone_open_the_window_on_that_lab() {
    Path[] lab = new Path[1];
    Task window =
        session -> {
          lab[0] = session.labFolder();
          return 0;
        };
    List<CommandEntry> offered = List.of(new CommandEntry("window", "opens", () -> window));
    assertEquals(0, run(offered, "--lab", home.resolve("upper").toString()));
    assertEquals(home.resolve("upper"), lab[0]);
    assertEquals(0, run(offered));
    assertEquals(home.resolve(".siltbench"), lab[0]);
    assertEquals(2, run(offered, "--lab"));
  }

  @Test
  void a_line_of_input_ends_at_its_end_and_may_not_be_endless() throws IOException {
    byte[] lines = ("one\r\ntwo\n\n" + "x".repeat(5000)).getBytes(StandardCharsets.UTF_8);
    Console console = Console.over(new ByteArrayInputStream(lines), out, err);
    assertEquals("one", console.readLine());
    assertEquals("two", console.readLine());
    assertEquals("", console.readLine());
    org.junit.jupiter.api.Assertions.assertThrows(IOException.class, console::readLine);
  }
}
