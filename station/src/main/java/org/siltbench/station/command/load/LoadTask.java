package org.siltbench.station.command.load;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.load.LogBase;
import org.siltbench.labels.Imprint;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import org.siltbench.station.work.load.BatchLoad;
import org.siltbench.station.work.load.Flow;
import org.siltbench.station.work.load.LoadDocument;
import org.siltbench.station.work.load.LoadFiles;
import org.siltbench.station.work.load.LoadQuestion;
import org.siltbench.station.work.load.LoadUnit;
import org.siltbench.station.work.load.Loads;
import org.siltbench.station.work.load.Samples;
import org.siltbench.station.work.paper.Imprints;
import picocli.CommandLine.Option;

/** {@code load}. */
final class LoadTask implements Task {

  @Option(
      names = "--discharge",
      required = true,
      paramLabel = "F.csv",
      description = "discharge over time: time, q_m3_s or q_ft3_s, optionally site")
  private Path discharge = Path.of("");

  @Option(names = "--batch", paramLabel = "NAME", description = "take the results of this batch")
  private @Nullable String batch;

  @Option(
      names = "--samples",
      paramLabel = "F.csv",
      description = "take concentrations from a table as calc writes it; needs no lab")
  private @Nullable Path samples;

  @Option(names = "--site", paramLabel = "NAME", description = "only this site")
  private @Nullable String site;

  @Option(names = "--from", paramLabel = "TIME", description = "begin; default: the common time's")
  private @Nullable String from;

  @Option(names = "--to", paramLabel = "TIME", description = "end; default: the common time's")
  private @Nullable String to;

  @Option(
      names = "--flow-step",
      paramLabel = "SPAN",
      description = "longest step between two discharges; more is a gap; default: ${DEFAULT-VALUE}")
  private String flowStep = "1h";

  @Option(
      names = "--sample-step",
      paramLabel = "SPAN",
      description = "longest step between two samples; more is a gap; default: ${DEFAULT-VALUE}")
  private String sampleStep = "6h";

  @Option(
      names = "--shared-pct",
      paramLabel = "PCT",
      description =
          "uncertainty that all samples share, as of one funnel, %%; default: the method's"
              + " calibration and temperature of the volume, 0 with --samples")
  private @Nullable Double shared;

  @Option(
      names = "--log-base",
      paramLabel = "10-or-e",
      description = "base of the rating curve's logarithms; default: ${DEFAULT-VALUE}")
  private String base = "10";

  @Option(
      names = "--units",
      paramLabel = "metric-or-us",
      description = "tonnes and m³/s, or short tons and ft³/s; default: ${DEFAULT-VALUE}")
  private String units = "metric";

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "write the table and the loops as pictures into this folder")
  private @Nullable Path out;

  @Override
  public int run(Session session) throws IOException {
    if ((batch == null) == (samples == null)) {
      throw new Problem.WrongUse(
          "A load needs concentrations from one place.", "Give either --batch or --samples.");
    }
    LoadUnit unit = LoadUnit.of(units);
    Path table = samples;
    if (table != null) {
      Flow flow = Flow.read(discharge, session.clock());
      LoadQuestion question = asked(session).question(0);
      tell(session, Loads.of(question, flow, Samples.read(table, session.clock())), unit, null);
    } else {
      Bench bench = session.existingBench();
      Loads loads = asked(session).of(bench, session.methods(), name(), discharge);
      tell(session, loads, unit, Imprints.of(bench));
    }
    return 0;
  }

  private String name() {
    return batch == null ? "" : batch;
  }

  private BatchLoad asked(Session session) {
    return new BatchLoad(
        site,
        moment(session, from),
        moment(session, to),
        step(flowStep),
        step(sampleStep),
        shared == null ? null : (Double) (shared / 100),
        base());
  }

  private static Duration step(String text) {
    return Times.span(text);
  }

  private static @Nullable OffsetDateTime moment(Session session, @Nullable String text) {
    return text == null ? null : Times.moment(text, session.clock().getZone());
  }

  private LogBase base() {
    return switch (base) {
      case "10" -> LogBase.TEN;
      case "e" -> LogBase.E;
      default ->
          throw new Problem.WrongUse("\"" + base + "\" is no base of logarithms.", "Say 10 or e.");
    };
  }

  private void tell(Session session, Loads loads, LoadUnit unit, @Nullable Imprint imprint) {
    Map<String, @Nullable Object> document = LoadDocument.of(loads, unit);
    Path folder = out;
    if (folder != null) {
      List<Path> files = LoadFiles.write(loads, unit, folder, imprint);
      document.put("files", files.stream().map(Path::toString).toList());
      files.forEach(file -> session.message("Written: " + file));
    }
    session.document(document);
    loads.sites().forEach(each -> LoadText.of(each, unit).forEach(session::fact));
    loads.sites().forEach(each -> each.notes().forEach(note -> session.message(note.english())));
    loads.notes().forEach(note -> session.message(note.english()));
  }
}
