package org.siltbench.station.window;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.command.Main;
import org.siltbench.station.elsewhere.Elsewhere;

/** Opens a second window over a practice lab, beside this one: the two never mix. */
final class Beside {

  private final Setting setting;
  private final List<String> options;

  /** With the same Java options as this window. */
  Beside(Setting setting) {
    this(setting, ManagementFactory.getRuntimeMXBean().getInputArguments());
  }

  Beside(Setting setting, List<String> options) {
    this.setting = setting;
    this.options = List.copyOf(options);
  }

  /** Makes the practice lab if it is not there, and starts a window over it. */
  Process open(Path folder) {
    if (!LabFolder.exists(folder)) {
      LabFolder.create(folder, "practice", true, setting).close();
    }
    try {
      return new ProcessBuilder(command(folder))
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException e) {
      throw new Problem.Outside(e, WindowSays.PRACTICE_NOT_STARTED, Elsewhere.words(e), folder);
    }
  }

  /** This same program, with the same Java and the same class path. */
  List<String> command(Path folder) {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(options);
    words.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
    words.addAll(List.of("window", "--lab", folder.toString(), "--balance", "practice"));
    return words;
  }
}
