package org.siltbench.station.command.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.FastTime;

/** Pre-weighing against a balance that is another process writing lines into a pseudo-terminal. */
@Timeout(120)
class PreWeighPtyIT {

  private static final int FASTER = 10;

  @TempDir Path folder;

  private PtyFeed balance;
  private CommandLab lab;
  private final Deque<String> loads = new ArrayDeque<>();

  @BeforeEach
  void setUp() throws Exception {
    balance = feed("0.00000 g");
    lab = new CommandLab(folder.resolve("lab"), new FastTime(FASTER));
    lab.ok("batch", "new", "--name", "B", "--lot", "L", "--method", "epa-160.2", "--count", "9");
    lab.watching(this::hand);
  }

  @AfterEach
  void tearDown() throws Exception {
    balance.close();
  }

  private PtyFeed feed(String first) throws Exception {
    return new PtyFeed(folder.resolve("port"), 100 / FASTER, first);
  }

  /** Does what a person at the bench does when asked. */
  private void hand(String line) {
    if (line.contains("\"event\":\"place\"")) {
      balance.show(loads.isEmpty() ? "0.00000 g" : loads.poll());
    } else if (line.contains("\"event\":\"take-off\"")) {
      balance.show("0.00000 g");
    }
  }

  private int preweigh(int count, String... more) {
    List<String> words =
        new java.util.ArrayList<>(
            List.of("preweigh", "--batch", "B", "--balance", balance.spec(), "--json", "--events"));
    words.addAll(List.of("--count", Integer.toString(count)));
    words.addAll(List.of(more));
    return lab.run(words.toArray(new String[0]));
  }

  @SuppressWarnings("unchecked")
  private List<String> masses() throws Exception {
    return ((List<Map<String, Object>>) lab.document().get("weighings"))
        .stream().map(one -> (String) one.get("mass_g")).collect(Collectors.toList());
  }

  @Test
  void recorded_masses_are_the_displayed_digits() throws Exception {
    loads.addAll(List.of("0.12870 g", "+  0.11234 g", "0.09900 g"));
    assertEquals(0, preweigh(3), lab::err);
    assertEquals(List.of("0.12870", "0.11234", "0.09900"), masses());
    assertTrue(VerifyLab.of(lab.folder(), List.of()).ok());
  }

  @Test
  void milligrams_are_kept_with_their_digits_in_grams() throws Exception {
    balance.close();
    balance = feed("0.00 mg");
    loads.add("128.70 mg");
    lab.watching(
        line -> {
          if (line.contains("\"event\":\"place\"")) {
            balance.show(loads.poll());
          }
        });
    assertEquals(0, preweigh(1), lab::err);
    assertEquals(List.of("0.12870"), masses());
  }

  @Test
  void a_pulled_cable_is_reported_and_recovered_from() throws Exception {
    loads.addAll(List.of("0.12874 g", "0.11234 g"));
    int[] settling = new int[1];
    lab.watching(
        line -> {
          hand(line);
          if (line.contains("\"event\":\"settling\"") && ++settling[0] == 2) {
            pull();
          } else if (line.contains("\"event\":\"link-lost\"")) {
            plug();
          }
        });
    assertEquals(0, preweigh(2), lab::err);
    assertEquals(List.of("0.12874", "0.11234"), masses());
    assertTrue(lab.err().contains("link-lost") && lab.err().contains("link-back"), lab::err);
  }

  @Test
  void a_cable_that_stays_away_ends_the_work_with_3_and_loses_nothing() throws Exception {
    loads.addAll(List.of("0.12874 g", "0.11234 g"));
    int[] settling = new int[1];
    lab.watching(
        line -> {
          hand(line);
          if (line.contains("\"event\":\"settling\"") && ++settling[0] == 2) {
            pull();
          }
        });
    assertEquals(3, preweigh(2, "--give-up", "5s"), lab::err);
    assertEquals(List.of("0.12874"), masses());
    assertTrue(lab.err().contains("link-lost"), lab::err);
    lab.ok("batch", "list");
    assertTrue(lab.out().contains("0.12874 g"), lab::out);
    assertFalse(lab.out().contains("0.11234"), lab::out);
    assertTrue(VerifyLab.of(lab.folder(), List.of()).ok());
  }

  @Test
  void a_mass_outside_the_window_is_not_recorded() throws Exception {
    loads.addAll(List.of("0.25748 g", "0.12874 g"));
    assertEquals(0, preweigh(1, "--window", "0.100..0.150"), lab::err);
    assertEquals(List.of("0.12874"), masses());
    assertTrue(lab.out().contains("outside the lot's window"), lab::out);
  }

  @Test
  void lines_without_a_unit_are_never_a_mass() throws Exception {
    balance.close();
    balance = feed("0.00000");
    assertEquals(3, preweigh(1, "--give-up", "4s"), lab::err);
    assertTrue(lab.err().contains("unreadable"), lab::err);
  }

  @Test
  void a_port_that_is_not_there_ends_with_3() {
    assertEquals(
        3, lab.run("preweigh", "--batch", "B", "--balance", "serial:" + folder.resolve("none")));
    assertTrue(lab.err().contains("none"), lab::err);
  }

  private void pull() {
    try {
      balance.pullOut();
    } catch (IOException | InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  private void plug() {
    try {
      balance.plugIn();
    } catch (IOException | InterruptedException e) {
      throw new AssertionError(e);
    }
  }
}
