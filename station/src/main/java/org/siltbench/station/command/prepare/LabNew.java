package org.siltbench.station.command.prepare;

import java.util.LinkedHashMap;
import java.util.Map;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.Names;
import picocli.CommandLine.Option;

/** {@code lab new}. */
final class LabNew implements Task {

  @Option(names = "--name", paramLabel = "NAME", description = "what people call this bench")
  private String name = "bench";

  @Option(
      names = "--practice",
      description = "for the practice balance only; its papers say so across the page")
  private boolean practice;

  @Override
  public int run(Session session) {
    Bench bench = session.create(Names.check("bench", name), practice);
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("bench", bench.code());
    document.put("name", name);
    document.put("practice", practice);
    document.put("folder", session.labFolder().toString());
    session.document(document);
    session.fact("bench " + bench.code());
    return 0;
  }
}
