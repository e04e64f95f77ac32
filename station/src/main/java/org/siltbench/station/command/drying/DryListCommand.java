package org.siltbench.station.command.drying;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.life.About;
import org.siltbench.station.life.CycleState;
import org.siltbench.station.work.drying.DryCycles;
import picocli.CommandLine.Option;

/** {@code dry list}. */
final class DryListCommand implements Task {

  @Option(names = "--open", description = "only cycles with filters in the oven")
  private boolean open;

  @Override
  public int run(Session session) {
    Bench bench = session.existingBench();
    List<CycleState> cycles =
        open
            ? DryCycles.open(bench.register())
            : bench.register().list(About.CYCLE, "", "").stream()
                .flatMap(row -> DryCycles.find(bench.register(), row.subject().id()).stream())
                .toList();
    List<Map<String, @Nullable Object>> document = new ArrayList<>();
    for (CycleState cycle : cycles) {
      document.add(DryText.fields(cycle));
      session.fact(DryText.line(cycle));
    }
    session.document(document);
    return 0;
  }
}
