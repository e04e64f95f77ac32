package org.siltbench.station.command.drying;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.drying.Dishes;
import org.siltbench.station.work.drying.DryStart;
import org.siltbench.station.work.drying.Due;
import org.siltbench.station.work.drying.Purpose;
import org.siltbench.station.work.scan.BagScan;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code dry start}. */
final class DryStartCommand implements Task {

  @Option(
      names = "--filters",
      split = ",",
      paramLabel = "ID[=DISH]",
      description =
          "filters, each with its dish where it has one; - reads them from standard input")
  private List<String> filters = List.of();

  @Option(
      names = "--batch",
      paramLabel = "NAME",
      description = "all of a batch that are due: received, or to be dried again")
  private @Nullable String batch;

  @Option(names = "--number", description = "number the dishes from 1 where none is named")
  private boolean number;

  @Option(
      names = "--purpose",
      paramLabel = "WORD",
      description = "post (loaded filters), pre (clean ones) or ignition; default: post")
  private String purpose = "post";

  @Mixin private HeatOptions heat = new HeatOptions();

  @Option(
      names = {"--in", "--at"},
      paramLabel = "TIME",
      description = "when the oven was back in range, if not now")
  private @Nullable String in;

  @Option(names = "--cycle", paramLabel = "ID", description = "join this running cycle")
  private String cycle = "";

  @Option(names = "--restart", description = "with --cycle: its clock starts anew for all in it")
  private boolean restart;

  @Option(names = "--card", paramLabel = "F.pdf", description = "write the card for the oven door")
  private @Nullable Path card;

  @Override
  public int run(Session session) throws IOException {
    Bench bench = session.existingBench();
    Purpose why = Purpose.of(purpose);
    DryStart start =
        new DryStart(
            dishes(session, bench, why),
            why,
            heat.heat(),
            Times.past(in, session.clock()),
            cycle,
            restart);
    DryStart.Started started = start.record(bench, session.methods());
    new DryText(session).started(started);
    if (card != null) {
      CardFile.write(session, bench, started, card);
    }
    return 0;
  }

  private Map<String, String> dishes(Session session, Bench bench, Purpose why) throws IOException {
    Map<String, String> out = new LinkedHashMap<>();
    if (batch != null) {
      String code = Batches.require(bench.register(), batch).code();
      for (FilterState state : Filters.ofBatch(bench.register(), code)) {
        if (Due.isDue(state, why)) {
          out.put(state.id(), "");
        }
      }
    }
    for (String entered : filters) {
      if (entered.strip().equals("-")) {
        for (String line = session.console().readLine();
            line != null;
            line = session.console().readLine()) {
          add(out, line);
        }
      } else {
        add(out, entered);
      }
    }
    return number ? Dishes.numbered(out) : out;
  }

  private static void add(Map<String, String> out, String entered) {
    if (entered.isBlank()) {
      return;
    }
    String[] parts = entered.strip().split("[=\\s;]+", 2);
    String id = BagScan.of(parts[0]).filter().text();
    if (out.put(id, parts.length > 1 ? parts[1].strip() : "") != null) {
      throw new Problem.Refused(
          "Filter " + id + " was named twice.", "Nothing was recorded.", "Name each filter once.");
    }
  }
}
