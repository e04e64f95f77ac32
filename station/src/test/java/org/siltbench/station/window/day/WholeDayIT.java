package org.siltbench.station.window.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.command.PracticeProcess;
import org.siltbench.station.command.weigh.LabelQueue;
import org.siltbench.station.life.LifeSubjects;
import org.siltbench.station.window.BenchTime;

/**
 * One day, from signing on to the amended report, in the window under a robot and by commands: each
 * on a practice balance of its own, a process at the far end of a real pseudo-terminal. The window
 * is a process of its own and prints its labels on a real queue. In the end both ledger files say
 * the same.
 */
@Timeout(600)
class WholeDayIT {

  @TempDir Path folder;

  /** Two labs of the same chance have the same codes. */
  private Path lab(String name) {
    Path lab = folder.resolve(name);
    Setting setting =
        new Setting(
            Plan.WHO, new BenchTime(1).clock(), new Random(1), new LifeSubjects(), note -> {});
    LabFolder.create(lab, "day", false, setting).close();
    return lab;
  }

  private Path byCommands() throws Exception {
    Path lab = lab("commands");
    Path port = folder.resolve("commands-port");
    try (PracticeProcess balance = DayWindow.balance(port)) {
      new DayByCommand(lab, port, balance).run();
    }
    return lab;
  }

  @Test
  void the_window_ends_the_day_with_the_ledger_that_the_commands_write() throws Exception {
    ExecutorService beside = Executors.newSingleThreadExecutor();
    Path window = lab("window");
    try {
      Future<Path> commands = beside.submit(this::byCommands);
      boolean printed = LabelQueue.canBeHere();
      if (printed) {
        inTheWindowWithAPrinter(window);
      } else {
        DayWindow.spend(window, folder.resolve("window-port"), Map.of(), "");
      }
      assertTrue(VerifyLab.of(commands.get(), List.of()).ok());
      assertTrue(VerifyLab.of(window, List.of()).ok());
      assertSame(commands.get(), window);
      assumeTrue(printed, "NOT PROVEN: labels on a queue; a print system needs root");
    } finally {
      beside.shutdownNow();
    }
  }

  /** Its labels come out of a real queue, and are read back. */
  private void inTheWindowWithAPrinter(Path lab) throws Exception {
    Path ledger = lab.resolve("ledger").resolve(LabFolder.readCode(lab) + ".jsonl");
    try (LabelQueue queue = LabelQueue.start(ledger)) {
      Map<String, String> finds = Map.of("CUPS_SERVER", queue.address());
      DayWindow.spend(lab, folder.resolve("window-port"), finds, "label");
      queue.await(() -> queue.printed().size() == 1);
      Set<String> filters = DayLedger.preWeighed(lab);
      assertEquals(
          filters,
          Set.copyOf(PrintedLabels.filters(queue, queue.printed().get(0), filters.size())));
    }
  }

  private static void assertSame(Path commands, Path window) {
    List<String> facts = DayLedger.facts(commands);
    assertEquals(facts.size(), DayLedger.facts(window).size());
    for (int i = 0; i < facts.size(); i++) {
      assertEquals(facts.get(i), DayLedger.facts(window).get(i));
    }
    Map<String, Double> weighed = DayLedger.measured(window);
    DayLedger.measured(commands)
        .forEach((what, value) -> assertEquals(value, weighed.get(what), most(what), what));
  }

  /** Two runs of a balance in haste agree within 0.2 mg; a concentration is that over 250 mL. */
  private static double most(String what) {
    return what.endsWith("_mg_l") ? 1.2 : what.endsWith("_mg") ? 0.3 : 0.0003;
  }
}
