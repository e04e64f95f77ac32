package org.siltbench.demo.bench.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.ToLongFunction;
import org.siltbench.demo.bench.ledger.OpenMeasure;
import org.siltbench.station.json.Json;

/**
 * The window and an empty window in turn, each started as a person starts it, with the same options
 * and the same class archive, which is made by running the window once.
 */
public final class StartMeasure {

  private static final double GOAL = 1.5;

  /** From the start of the process to the mass on the screen, and what the processor did so far. */
  private record Noted(long millis, long worked) {}

  private final Path root;
  private final Path folder;
  private final Path lab; // where a person's own lab is looked for
  private final String display;

  private StartMeasure(Path folder, String display) {
    this.root = Path.of(System.getProperty("siltbench.root", "."));
    this.folder = folder;
    this.lab = folder.resolve(".siltbench");
    this.display = display;
  }

  /**
   * Runs it.
   *
   * @param args {@code --rounds N}, and {@code --weighings N} for a lab with so long a history
   */
  public static String run(String[] args) throws IOException, InterruptedException {
    int rounds = number(args, "--rounds", 7);
    int weighings = number(args, "--weighings", 0);
    Path folder = Files.createTempDirectory("siltbench-start");
    try (Screen screen = Screen.open()) {
      StartMeasure measure = new StartMeasure(folder, screen.display());
      OpenMeasure.lab(measure.lab, weighings);
      Files.writeString(measure.lab.resolve("window.json"), "{\"balance\":\"practice\"}\n");
      return Json.write(measure.rounds(rounds, weighings));
    } finally {
      OpenMeasure.remove(folder);
    }
  }

  private static int number(String[] args, String word, int otherwise) {
    int at = Arrays.asList(args).indexOf(word);
    return at < 0 || at + 1 >= args.length ? otherwise : Integer.parseInt(args[at + 1]);
  }

  private Map<String, Object> rounds(int rounds, int weighings)
      throws IOException, InterruptedException {
    window(); // makes the archive if there is none, and the register
    window();
    empty();
    List<Noted> ours = new ArrayList<>();
    List<Noted> theirs = new ArrayList<>();
    for (int i = 0; i < rounds; i++) {
      theirs.add(empty());
      ours.add(window());
    }
    double ratio = ratio(ours, theirs, Noted::millis);
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("measure", "start");
    result.put("rounds", (long) rounds);
    result.put("weighings", (long) weighings);
    result.put("window_ms", spread(ours, Noted::millis));
    result.put("empty_window_ms", spread(theirs, Noted::millis));
    result.put("ratio", rounded(ratio));
    result.put("window_processor_ms", spread(ours, Noted::worked));
    result.put("empty_window_processor_ms", spread(theirs, Noted::worked));
    result.put("processor_ratio", rounded(ratio(ours, theirs, Noted::worked)));
    result.put("goal", Double.toString(GOAL));
    result.put("met", ratio <= GOAL);
    return result;
  }

  private Noted window() throws IOException, InterruptedException {
    return timed("org.siltbench.station.command.Main", List.of());
  }

  private Noted empty() throws IOException, InterruptedException {
    return timed(EmptyWindow.class.getName(), List.of());
  }

  /** From just before the process starts to the moment it noted. */
  private Noted timed(String main, List<String> words) throws IOException, InterruptedException {
    Path note = folder.resolve("once");
    Files.deleteIfExists(note);
    String[] command = new String[words.size() + 1];
    command[0] = root.resolve("siltbench").toString();
    for (int i = 0; i < words.size(); i++) {
      command[i + 1] = words.get(i);
    }
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("DISPLAY", display);
    builder.environment().put("SILTBENCH_MAIN", main);
    builder
        .environment()
        .put(
            "SILTBENCH_JAVA_OPTIONS", "-Duser.home=" + folder + " -Dsiltbench.window.once=" + note);
    builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
    builder.redirectError(ProcessBuilder.Redirect.INHERIT);
    long start = System.currentTimeMillis();
    Process process = builder.start();
    if (!process.waitFor(3, TimeUnit.MINUTES) || process.exitValue() != 0) {
      process.destroyForcibly();
      throw new IOException("the window did not come up and close again");
    }
    String[] noted = Files.readString(note).split(" ");
    return new Noted(Long.parseLong(noted[0]) - start, Long.parseLong(noted[1]));
  }

  private static double ratio(List<Noted> ours, List<Noted> theirs, ToLongFunction<Noted> what) {
    return (double) median(ours, what) / Math.max(1, median(theirs, what));
  }

  private static String rounded(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  private static long median(List<Noted> values, ToLongFunction<Noted> what) {
    return values.stream().mapToLong(what).sorted().skip(values.size() / 2).findFirst().orElse(0);
  }

  private static Map<String, Object> spread(List<Noted> values, ToLongFunction<Noted> what) {
    Map<String, Object> spread = new LinkedHashMap<>();
    spread.put("median", median(values, what));
    spread.put("least", values.stream().mapToLong(what).min().orElse(0));
    spread.put("most", values.stream().mapToLong(what).max().orElse(0));
    return spread;
  }
}
