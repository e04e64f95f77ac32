package org.siltbench.station.command.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.OwnProcess;

/**
 * Kill -9 at random moments of a real {@code preweigh} process: every announced mass is in the
 * ledger. A kill does not prove the force to disk; the faulty disk of the ledger's own tests does.
 */
class KilledPreWeighIT {

  private static final int BATCH = 500;

  @TempDir Path folder;

  @Test
  void thirty_kills_lose_no_announced_mass() throws Exception {
    kill(30, 20261125);
  }

  @Test
  @Tag("long")
  void a_thousand_kills_lose_no_announced_mass() throws Exception {
    kill(1000, 4711);
  }

  private void kill(int times, long seed) throws Exception {
    CommandLab lab = new CommandLab(folder.resolve("lab"));
    lab.ok("lab", "new", "--practice");
    Path archive = archive(lab.folder());
    Random random = new Random(seed);
    Map<String, String> announced = new HashMap<>();
    int batch = 0;
    int killedAtWork = 0;
    for (int i = 0; i < times; i++) {
      if (announced.size() >= batch * (BATCH - 100)) {
        batch++;
        lab.ok(newBatch("B" + batch));
      }
      Path out = folder.resolve("out");
      int now = run(lab.folder(), archive, "B" + batch, out, random, announced);
      killedAtWork += now > 0 ? 1 : 0;
    }
    proveAll(lab.folder(), announced);
    assertTrue(killedAtWork * 2 > times, "killed while it weighed: " + killedAtWork);
  }

  private static String[] newBatch(String name) {
    return new String[] {
      "batch", "new", "--name", name, "--lot", "L", "--method", "epa-160.2", "--count", "" + BATCH
    };
  }

  /** Starts it, waits for its first word, lets it go on for a random moment, kills it. */
  private static int run(
      Path lab, Path archive, String batch, Path out, Random random, Map<String, String> announced)
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(command(archive, lab, batch))
            .redirectOutput(out.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    int wanted = random.nextInt(4);
    long patience = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (lines(out).size() < wanted && process.isAlive() && System.nanoTime() < patience) {
      process.waitFor(2, TimeUnit.MILLISECONDS);
    }
    process.waitFor(random.nextInt(40), TimeUnit.MILLISECONDS);
    process.destroyForcibly().waitFor();
    List<String> said = lines(out);
    for (String line : said) {
      String[] words = line.split(" ");
      assertEquals("recorded", words[0], line);
      announced.put(words[1], words[2]);
    }
    return said.size();
  }

  /** Whole lines only: the reader of a pipe would not have seen half a line as a mass. */
  private static List<String> lines(Path out) throws IOException {
    String text = Files.readString(out, StandardCharsets.UTF_8);
    int end = text.lastIndexOf('\n');
    return end < 0 ? List.of() : text.substring(0, end).lines().toList();
  }

  private static List<String> command(Path archive, Path lab, String batch) {
    List<String> command = java(archive);
    command.addAll(List.of("preweigh", "--batch", batch, "--balance", "practice?seed=3"));
    command.addAll(List.of("--lab", lab.toString()));
    return command;
  }

  private static List<String> java(Path archive) {
    return OwnProcess.words(
        "-XX:SharedArchiveFile=" + archive, "-Xlog:cds=off", "-Xlog:cds+dynamic=off");
  }

  /**
   * A class archive made once, so that fifty starts stay quick; without it they are only slower.
   */
  private Path archive(Path lab) throws IOException, InterruptedException {
    Path archive = folder.resolve("classes.jsa");
    List<String> command = java(archive);
    command.set(3, "-XX:ArchiveClassesAtExit=" + archive);
    command.addAll(List.of("batch", "list", "--lab", lab.toString()));
    new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("archive.log").toFile())
        .start()
        .waitFor();
    return archive;
  }

  private static void proveAll(Path lab, Map<String, String> announced) throws IOException {
    VerifyLab.Report report = VerifyLab.of(lab, List.of());
    assertTrue(report.ok(), () -> report.problems().toString());
    List<String> ledger = new ArrayList<>();
    try (Stream<Path> files = Files.list(lab.resolve("ledger"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".jsonl")).toList()) {
        ledger.addAll(Files.readAllLines(file));
      }
    }
    List<String> weighings =
        ledger.stream().filter(line -> line.contains("\"kind\":\"weighing\"")).toList();
    announced.forEach(
        (filter, grams) ->
            assertTrue(
                weighings.stream()
                    .anyMatch(
                        line ->
                            line.contains("\"filter\":\"" + filter + '"')
                                && line.contains("\"mass_g\":\"" + grams + '"')),
                filter + " " + grams + " was announced and is not in the ledger"));
  }
}
