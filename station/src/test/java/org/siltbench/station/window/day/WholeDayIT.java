package org.siltbench.station.window.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
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
import org.siltbench.station.life.LifeSubjects;
import org.siltbench.station.window.BenchTime;

/**
 * One day, from signing on to the amended report, in the window under a robot and by commands: each
 * on a practice balance of its own, a process at the far end of a real pseudo-terminal. In the end
 * both ledger files say the same.
 */
@Timeout(300)
class WholeDayIT {

  @TempDir Path folder;

  private interface Day {
    void run(Path lab, Path port, PracticeProcess balance) throws Exception;
  }

  /** Two labs of the same chance have the same codes. */
  private Path day(String name, Day day) throws Exception {
    Path lab = folder.resolve(name);
    Setting setting =
        new Setting(
            Plan.WHO, new BenchTime(1).clock(), new Random(1), new LifeSubjects(), note -> {});
    LabFolder.create(lab, "day", false, setting).close();
    Path port = folder.resolve(name + "-port");
    try (PracticeProcess balance =
        new PracticeProcess(port, "--seed", "7", "--speed", "" + Plan.FASTER)) {
      day.run(lab, port, balance);
    }
    assertTrue(VerifyLab.of(lab, List.of()).ok());
    return lab;
  }

  @Test
  void the_window_ends_the_day_with_the_ledger_that_the_commands_write() throws Exception {
    ExecutorService beside = Executors.newSingleThreadExecutor();
    try {
      Future<Path> commands =
          beside.submit(
              () -> day("commands", (lab, port, pan) -> new DayByCommand(lab, port, pan).run()));
      Path window = day("window", (lab, port, pan) -> new DayByRobot(lab, port, pan).run());
      assertSame(commands.get(), window);
    } finally {
      beside.shutdownNow();
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
