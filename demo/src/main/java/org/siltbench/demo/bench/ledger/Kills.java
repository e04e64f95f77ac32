package org.siltbench.demo.bench.ledger;

import java.io.BufferedReader;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.VerifyLab;

/** Kills a writing process again and again and looks for everything it had announced. */
final class Kills {

  private Kills() {}

  static Map<String, Object> run(Path folder, int count, int seed)
      throws IOException, InterruptedException {
    Path lab = folder.resolve("killed");
    LabFolder.create(lab, "killed", false, Bits.setting(1)).close();
    Random random = new Random(seed);
    List<String> announced = new ArrayList<>();
    for (int kill = 0; kill < count; kill++) {
      announced.addAll(killed(lab, 1 + random.nextInt(40)));
    }
    Set<Object> recorded = new HashSet<>();
    try (OpenLab open = LabFolder.open(lab, Bits.setting(1))) {
      open.register().each(entry -> recorded.add(entry.data().get("filter")), "weighing");
    }
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("kills", (long) count);
    result.put("announced", (long) announced.size());
    announced.removeAll(recorded);
    if (!announced.isEmpty() || !VerifyLab.of(lab, List.of()).ok()) {
      throw new IllegalStateException("lost: " + announced);
    }
    result.put("lost", 0L);
    return result;
  }

  /** Started as this program was, and so with its class-data archive where it has one. */
  private static Process start(Path lab) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(ManagementFactory.getRuntimeMXBean().getInputArguments());
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.addAll(List.of(KilledWriter.class.getName(), lab.toString()));
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }

  private static List<String> killed(Path lab, int after) throws IOException, InterruptedException {
    Process writer = start(lab);
    List<String> lines = new ArrayList<>();
    try (BufferedReader out = writer.inputReader()) {
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        if (line.endsWith(";")) {
          lines.add(line.substring(0, line.length() - 1));
        }
        if (lines.size() == after) {
          boolean asked = writer.toHandle().destroyForcibly();
          if (!asked) {
            throw new IllegalStateException("the writer cannot be killed");
          }
        }
      }
    }
    writer.waitFor();
    return lines;
  }
}
