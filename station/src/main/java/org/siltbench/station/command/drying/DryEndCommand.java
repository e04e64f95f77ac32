package org.siltbench.station.command.drying;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import org.siltbench.station.work.drying.DryEnd;
import org.siltbench.station.work.scan.BagScan;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code dry end}. */
final class DryEndCommand implements Task {

  @Option(
      names = "--cycle",
      paramLabel = "ID",
      description = "the cycle; default: the only one that runs")
  private String cycle = "";

  @Option(
      names = "--filters",
      split = ",",
      paramLabel = "ID",
      description = "take only these out, one desiccator load; default: all still in")
  private List<String> filters = List.of();

  @Mixin private HeatOptions heat = new HeatOptions();

  @Option(
      names = {"--out", "--at"},
      paramLabel = "TIME",
      description = "when they came out, if not now")
  private @Nullable String out;

  @Override
  public int run(Session session) {
    Bench bench = session.existingBench();
    Set<String> only = new HashSet<>();
    filters.forEach(id -> only.add(BagScan.of(id).filter().text()));
    DryEnd end = new DryEnd(cycle, only, heat.heat(), Times.past(out, session.clock()));
    new DryText(session).ended(end.record(bench, session.methods()));
    return 0;
  }
}
