package org.siltbench.demo.bench.all;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;

/** Runs the measures one after another, keeps their figures and writes the page. */
public final class AllMeasure {

  private final Path root;
  private final boolean atLength;
  private final List<String> only;
  private final Map<String, BigDecimal> figures = new LinkedHashMap<>();
  private final Map<String, String> failed = new LinkedHashMap<>();

  private AllMeasure(Path root, List<String> args) {
    this.root = root;
    atLength = args.contains("--long");
    only = only(args);
  }

  private static List<String> only(List<String> args) {
    int at = args.indexOf("--only");
    if (at < 0 && args.contains("--take")) {
      return List.of();
    }
    if (at < 0) {
      return Measure.ALL.stream().map(Measure::name).toList();
    }
    if (at + 1 == args.size()) {
      throw new IllegalArgumentException("--only takes names of measures with commas between");
    }
    List<String> wanted = Arrays.asList(args.get(at + 1).split(",", -1));
    List<String> known = Measure.ALL.stream().map(Measure::name).toList();
    if (!known.containsAll(wanted)) {
      throw new IllegalArgumentException("The measures are " + String.join(", ", known) + ".");
    }
    return wanted;
  }

  /**
   * Runs them and adds a line to the history.
   *
   * @param args {@code --long} for the sizes of the goals, {@code --only NAME,NAME} for some,
   *     {@code --out DIR} for another folder than docs
   * @return the page
   */
  public static String run(String[] args) throws IOException, InterruptedException {
    Path root = Path.of(System.getProperty("siltbench.root", "."));
    List<String> words = List.of(args);
    int out = words.indexOf("--out");
    Path docs = out < 0 ? root.resolve("docs") : Path.of(words.get(out + 1));
    AllMeasure all = new AllMeasure(root, words);
    Path file = docs.resolve("benchmarks.jsonl");
    History before = History.read(file); // refused before an hour is spent
    if (words.contains("--page")) {
      return written(docs, before);
    }
    String load = Machine.load();
    all.take(words);
    for (Measure measure : Measure.ALL) {
      if (all.only.contains(measure.name())) {
        all.measure(measure);
      }
    }
    Figures run =
        new Figures(
            OffsetDateTime.now(ZoneId.systemDefault())
                .format(DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mmXXX")),
            all.revision(),
            Machine.words(),
            load,
            all.figures,
            all.failed);
    all.failed.forEach((name, why) -> System.err.println(name + " gave no figures: " + why));
    return written(docs, before.add(file, run));
  }

  /** Documents that measures printed before, as of a long run of one of them. */
  private void take(List<String> args) throws IOException {
    for (int i = 0; i + 1 < args.size(); i++) {
      if (args.get(i).equals("--take")) {
        String[] word = args.get(i + 1).split("=", 2);
        Measure measure =
            Measure.ALL.stream()
                .filter(one -> one.name().equals(word[0]) && word.length == 2)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("--take takes MEASURE=FILE"));
        keep(measure, Files.readString(Path.of(word[1])));
      }
    }
  }

  private static String written(Path docs, History history) throws IOException {
    String page = Page.of(history);
    Files.writeString(docs.resolve("benchmarks.md"), page);
    return page;
  }

  private void measure(Measure measure) throws IOException, InterruptedException {
    System.err.println(measure.name() + " …");
    List<String> command = new ArrayList<>();
    command.add(root.resolve("demo").resolve("bench").toString());
    command.add(measure.name());
    command.add("--json");
    command.addAll(atLength ? measure.atLength() : measure.shortly());
    Path said = Files.createTempFile("siltbench-bench", ".err");
    try {
      ProcessBuilder builder = new ProcessBuilder(command).redirectError(said.toFile());
      Process process = builder.start();
      String document = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      int status = process.waitFor();
      if (status == 0) {
        keep(measure, document);
      } else {
        failed.put(measure.name(), "it ended with " + status + ". " + last(said));
      }
    } finally {
      Files.deleteIfExists(said);
    }
  }

  private void keep(Measure measure, String document) {
    try {
      Object read = Json.read(document);
      for (Claim claim : Measure.CLAIMS) {
        if (claim.measure().equals(measure.name())) {
          claim.in(read).ifPresent(figure -> figures.put(claim.key(), figure));
        }
      }
    } catch (NotJson | NumberFormatException e) {
      failed.put(measure.name(), "its document cannot be read: " + e.getMessage());
    }
  }

  private static String last(Path said) throws IOException {
    List<String> lines = Files.readAllLines(said);
    return lines.isEmpty() ? "It said nothing." : lines.get(lines.size() - 1);
  }

  /** The short name of the commit, with a plus where something was changed since. */
  private String revision() throws IOException, InterruptedException {
    if (!Files.exists(root.resolve(".git"))) {
      return "unknown";
    }
    String commit = git("rev-parse", "--short", "HEAD").strip();
    String changes =
        git("status", "--porcelain", "--untracked-files=no", "--", ":!docs/benchmarks*");
    return changes.isBlank() ? commit : commit + "+";
  }

  private String git(String... words) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("git", "-C", root.toString()));
    command.addAll(List.of(words));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return process.waitFor() == 0 ? answer : "unknown";
  }
}
