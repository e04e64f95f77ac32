package org.siltbench.demo.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.practice.PracticeSetup;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import picocli.CommandLine.Option;

/** {@code demo}. */
final class DemoCommand implements Task {

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "folder for lab, papers and results; default: a new temporary one")
  private @Nullable Path out;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "where all chance comes from; default: ${DEFAULT-VALUE}")
  private long seed = 20261014;

  @Override
  public int run(Session session) throws IOException {
    Path folder = folder();
    PracticeSetup.Via via = via();
    session.message("The demo works in " + folder + ".");
    if (via == PracticeSetup.Via.MEMORY) {
      session.message("There is no socat here, so the balance's bytes stay in memory.");
    }
    Campaign.Outcome outcome = new Campaign(folder, seed, via, story(session)).run();
    session.document(document(outcome, folder, via));
    tell(session, outcome, folder);
    return passed(outcome) ? 0 : 1;
  }

  private Path folder() throws IOException {
    Path wanted = out;
    if (wanted == null) {
      return Files.createTempDirectory("siltbench-demo");
    }
    if (Files.exists(wanted)) {
      try (Stream<Path> inside = Files.list(wanted)) {
        if (inside.findAny().isPresent()) {
          throw new Problem.Refused(
              "The folder " + wanted + " is not empty.",
              "Nothing was changed.",
              "Give a new folder with --out.");
        }
      }
    }
    return Files.createDirectories(wanted).toAbsolutePath();
  }

  /** A real pseudo-terminal where the system offers one. */
  private static PracticeSetup.Via via() {
    String path = System.getenv().getOrDefault("PATH", "");
    for (String dir : path.split(java.io.File.pathSeparator)) {
      if (!dir.isEmpty() && Files.isExecutable(Path.of(dir, "socat"))) {
        return PracticeSetup.Via.PTY;
      }
    }
    return PracticeSetup.Via.MEMORY;
  }

  private static Story story(Session session) {
    return new Story() {
      @Override
      public void chapter(String title) {
        session.announce(title, Map.of("event", "chapter", "title", title));
      }

      @Override
      public void tell(String line) {
        session.announce("  " + line, Map.of("event", "step", "what", line));
      }
    };
  }

  private static boolean passed(Campaign.Outcome outcome) {
    return outcome.lost() == 0 && outcome.faults().values().stream().allMatch(seen -> seen);
  }

  private static Map<String, Object> document(
      Campaign.Outcome outcome, Path folder, PracticeSetup.Via via) {
    Comparison comparison = outcome.comparison();
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("samples", comparison.samples());
    document.put("within_U", comparison.within());
    document.put(
        "coverage_interval", comparison.interval().stream().map(DemoCommand::share).toList());
    document.put("faults_expected", outcome.faults().size());
    document.put(
        "faults_flagged", (int) outcome.faults().values().stream().filter(seen -> seen).count());
    document.put("lost", outcome.lost());
    document.put("announced", outcome.announced());
    document.put("faults", outcome.faults());
    document.put("link", via == PracticeSetup.Via.PTY ? "pseudo-terminal" : "memory");
    document.put("out", folder.toString());
    return document;
  }

  private static String share(double value) {
    return String.format(Locale.ROOT, "%.4f", value);
  }

  private static void tell(Session session, Campaign.Outcome outcome, Path folder) {
    Comparison comparison = outcome.comparison();
    List<Double> interval = comparison.interval();
    session.fact("Against the truth");
    session.fact(
        String.format(
            Locale.ROOT,
            "  %d of %d samples lie within their stated uncertainty (95 %% stated; %.1f to %.1f %%"
                + " fits this count)",
            comparison.within(),
            comparison.samples(),
            100 * interval.get(0),
            100 * interval.get(1)));
    outcome
        .faults()
        .forEach((fault, seen) -> session.fact("  " + (seen ? "noticed: " : "MISSED: ") + fault));
    session.fact(
        "  "
            + outcome.announced()
            + " masses announced, "
            + outcome.lost()
            + " of them not in the ledger");
    session.fact("Papers, results and ledger: " + folder);
  }
}
