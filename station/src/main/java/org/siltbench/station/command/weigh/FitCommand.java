package org.siltbench.station.command.weigh;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.audit.Owners;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.preweigh.KeyedMasses;
import org.siltbench.station.work.weigh.Measured;
import org.siltbench.station.work.weigh.PanLoad;
import org.siltbench.station.work.weigh.PanOutcome;
import org.siltbench.station.work.weigh.Pans;
import org.siltbench.station.work.weigh.Patience;
import org.siltbench.station.work.weigh.Scale;
import picocli.CommandLine.Option;

/** {@code fit}. Records nothing. */
final class FitCommand implements Task {

  @Option(names = "--batch", required = true, paramLabel = "NAME", description = "the batch")
  private String batch = "";

  @Option(names = "--balance", paramLabel = "SPEC", description = "weigh the loose filter here")
  private @Nullable String spec;

  @Option(names = "--mass", paramLabel = "G", description = "or give its mass, g")
  private @Nullable String mass;

  @Option(
      names = "--within",
      paramLabel = "MG",
      description = "how far off a recorded mass may be; default: ${DEFAULT-VALUE}")
  private String within = "0.5";

  @Option(
      names = "--give-up",
      paramLabel = "SPAN",
      description = "end after a silent or lost link of this length; default: ${DEFAULT-VALUE}")
  private String giveUp = "5m";

  @Override
  public int run(Session session) throws InterruptedException {
    Mass most = Limits.milligrams(within);
    if ((spec == null) == (mass == null)) {
      throw new Problem.WrongUse("Give either --balance or --mass.", "");
    }
    Bench bench = session.existingBench();
    BatchState state = Batches.require(bench.register(), batch);
    String grams =
        mass != null ? KeyedMasses.grams(mass) : weigh(session, bench, state, String.valueOf(spec));
    List<Owners.Candidate> found =
        Owners.of(bench.register(), state.code(), Mass.ofGrams(grams), most);
    tell(session, state, grams, found);
    return found.isEmpty() ? 1 : 0;
  }

  private String weigh(Session session, Bench bench, BatchState state, String link)
      throws InterruptedException {
    Method method = session.methods().inForce(bench.register(), state.method());
    try (Scale scale =
        Scale.open(
            bench,
            link,
            session.balances(),
            Pans.filters(method),
            Patience.USUAL.endingAfter(Times.span(giveUp)),
            new EventLines(session))) {
      PanOutcome outcome = scale.pan().weigh(new PanLoad.Loose());
      if (outcome instanceof PanOutcome.NotTaken no) {
        throw new Problem.Refused(
            "The filter was not weighed: " + no.why(), "", "Let it rest and try again.");
      }
      return Measured.observed((PanOutcome.Stable) outcome, scale.name(), scale.pan().formatName())
          .grams();
    }
  }

  private static void tell(
      Session session, BatchState batch, String grams, List<Owners.Candidate> found) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (Owners.Candidate one : found) {
      Map<String, String> row = new LinkedHashMap<>();
      row.put("filter", one.filter().id());
      row.put("mass_g", one.recorded().digits());
      row.put("off_mg", one.off().toMilligrams());
      rows.add(row);
      session.fact(
          one.filter().id()
              + "  "
              + one.recorded().digits()
              + " g  off "
              + one.off().toMilligrams()
              + " mg");
    }
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("batch", batch.name());
    document.put("mass_g", grams);
    document.put("fits", rows);
    session.document(document);
    if (found.size() != 1) {
      session.message(
          found.isEmpty()
              ? "No open filter of this batch has that mass."
              : found.size() + " filters fit: mass alone does not tell. Nothing was recorded.");
    }
  }
}
