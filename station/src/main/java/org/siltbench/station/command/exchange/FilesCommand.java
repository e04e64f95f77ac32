package org.siltbench.station.command.exchange;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.exchange.OwnFiles;
import picocli.CommandLine.Option;

/** {@code files}. */
final class FilesCommand implements Task {

  @Option(
      names = "--take",
      paramLabel = "FILE",
      description = "take in a .lineformat, a .method or a .media from elsewhere")
  private List<Path> take = List.of();

  @Option(
      names = "--give",
      paramLabel = "NAME",
      description = "write one out as it stands, as mine.method")
  private List<String> give = List.of();

  @Option(names = "--out", paramLabel = "DIR", description = "with --give: the folder")
  private @Nullable Path out;

  @Override
  public int run(Session session) {
    if (!session.labExists()) {
      throw new Problem.WrongUse(
          "There is no lab in " + session.labFolder() + '.', "Name one with --lab DIR.");
    }
    Path to = out;
    if (to == null && !give.isEmpty()) {
      throw new Problem.WrongUse("Where to?", "Give --out DIR.");
    }
    if (!take.isEmpty()) {
      session.weigher();
    }
    OwnFiles own = new OwnFiles(session.labFolder());
    List<String> taken = take.stream().map(own::take).map(Path::toString).toList();
    List<String> given =
        to == null ? List.of() : give.stream().map(n -> own.give(n, to).toString()).toList();
    tell(session, own, taken, given);
    return 0;
  }

  private static void tell(Session session, OwnFiles own, List<String> taken, List<String> given) {
    Map<String, @Nullable Object> document = new LinkedHashMap<>();
    document.put("files", own.names());
    document.put("taken", taken);
    document.put("given", given);
    session.document(document);
    taken.forEach(file -> session.fact("Taken in: " + file));
    given.forEach(file -> session.fact("Written: " + file));
    if (taken.isEmpty() && given.isEmpty()) {
      own.names().forEach(session::fact);
    }
  }
}
