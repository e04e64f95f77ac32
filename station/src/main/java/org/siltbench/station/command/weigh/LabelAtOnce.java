package org.siltbench.station.command.weigh;

import java.util.List;
import java.util.Map;
import org.siltbench.calc.method.Method;
import org.siltbench.labels.PaperProblem;
import org.siltbench.labels.label.LabelRun;
import org.siltbench.labels.media.Media;
import org.siltbench.labels.media.MediaCatalog;
import org.siltbench.labels.print.LabelPrinter;
import org.siltbench.labels.print.PrintOutcome;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.label.BagLabels;
import org.siltbench.station.work.paper.PaperFile;
import org.siltbench.station.work.preweigh.AfterRecord;
import org.siltbench.station.work.weigh.PanWatch;

/** Prints the label of the filter just weighed. If that fails the label waits; the mass is safe. */
final class LabelAtOnce implements AfterRecord {

  private final Session session;
  private final BagLabels labels;
  private final String queue;
  private final Media media;

  LabelAtOnce(
      Session session, Bench bench, BatchState batch, Method method, String queue, String media) {
    this.session = session;
    this.labels = new BagLabels(bench, batch, method);
    this.queue = queue;
    try {
      this.media = MediaCatalog.find(media);
    } catch (PaperProblem e) {
      throw PaperFile.problem(e);
    }
  }

  @Override
  public void done(String filter, Entry entry, PanWatch pan) {
    try {
      BagLabels.Ready ready = labels.of(filter);
      PrintOutcome outcome = LabelPrinter.print(queue, LabelRun.of(List.of(ready.label()), media));
      if (outcome instanceof PrintOutcome.Sent) {
        labels.record(List.of(ready), media.name(), queue, 1);
        session.announce("label " + filter, Map.of("event", "label", "filter", filter));
      } else {
        waits(filter, PrintText.of(outcome));
      }
    } catch (Problem.Refused e) {
      waits(filter, e.what());
    } catch (PaperProblem e) {
      waits(filter, e.what());
    }
  }

  private void waits(String filter, String why) {
    session.progress(
        "No label for " + filter + " yet: " + why + " Its mass is recorded; the label waits.",
        Map.of("event", "label-waits", "filter", filter, "why", why));
  }
}
