package org.siltbench.station.command.weigh;

import java.util.List;
import java.util.Map;
import org.siltbench.calc.method.Method;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.label.BagLabels;
import org.siltbench.station.work.label.RollPrint;
import org.siltbench.station.work.preweigh.AfterRecord;
import org.siltbench.station.work.weigh.PanWatch;

/** Prints the label of the filter just weighed. If that fails the label waits; the mass is safe. */
final class LabelAtOnce implements AfterRecord, RollPrint.Told {

  private final Session session;
  private final String queue;
  private final String batch;
  private final RollPrint roll;

  LabelAtOnce(
      Session session,
      Bench bench,
      BatchState batch,
      Method method,
      String queue,
      String media,
      int dpi) {
    this.session = session;
    this.batch = batch.name();
    this.queue = queue;
    this.roll = new RollPrint(new BagLabels(bench, batch, method), queue, media, dpi, this);
  }

  /** Filters whose label has not gone to the queue yet, oldest first. */
  List<String> waiting() {
    return roll.waiting();
  }

  /** Says how to print what waits. */
  void tellWaiting() {
    int count = waiting().size();
    if (count > 0) {
      session.message(
          (count == 1 ? "1 label waits." : count + " labels wait.")
              + " Every mass is recorded. When the printer works again: siltbench labels --batch "
              + batch
              + " --new --printer "
              + queue);
    }
  }

  @Override
  public void done(String filter, Entry entry, PanWatch pan) {
    roll.print(filter);
  }

  @Override
  public void printed(String filter) {
    session.announce("label " + filter, Map.of("event", "label", "filter", filter));
  }

  @Override
  public void waits(String filter, Words why, int waiting) {
    session.progress(
        "No label for "
            + filter
            + " yet"
            + (waiting > 1 ? " (" + waiting + " wait): " : ": ")
            + why
            + " Its mass is recorded; the label waits.",
        Map.of("event", "label-waits", "filter", filter, "why", why));
  }
}
