package org.siltbench.station.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.life.LifeSubjects;

/** The practice window is a process of its own over a lab folder of its own. */
@Timeout(180)
class BesideIT {

  @TempDir Path folder;

  @Test
  void another_process_shows_the_practice_balance_over_a_practice_lab_and_ends_by_itself()
      throws Exception {
    Path practice = folder.resolve("lab-practice");
    Path note = folder.resolve("first-mass");
    List<String> options =
        new ArrayList<>(ManagementFactory.getRuntimeMXBean().getInputArguments());
    for (String screen :
        List.of("glass.platform", "monocle.platform", "prism.order", "headless.geometry")) {
      options.add("-D" + screen + '=' + System.getProperty(screen, ""));
    }
    options.add("-Duser.home=" + folder);
    options.add("-Dsiltbench.window.once=" + note);
    Setting setting =
        new Setting("AB", Clock.systemUTC(), new Random(3), new LifeSubjects(), said -> {});

    Process window = new Beside(setting, options).open(practice);
    try {
      assertTrue(window.waitFor(150, TimeUnit.SECONDS), "the window did not come up");
      assertEquals(0, window.exitValue());
    } finally {
      window.destroyForcibly().waitFor();
    }

    assertTrue(Files.exists(note), "no mass was shown");
    assertTrue(VerifyLab.of(practice, List.of()).ok());
    try (var lab = LabFolder.open(practice, setting)) {
      assertTrue(lab.practice());
    }
    assertFalse(Files.exists(folder.resolve(".siltbench")), "no real lab was made");
  }
}
