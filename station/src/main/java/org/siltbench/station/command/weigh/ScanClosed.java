package org.siltbench.station.command.weigh;

import java.util.List;
import java.util.Map;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Act;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Life;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.preweigh.AfterRecord;
import org.siltbench.station.work.scan.BagScan;
import org.siltbench.station.work.weigh.PanWatch;

/** Waits until the bag of the filter just weighed is scanned closed. */
final class ScanClosed implements AfterRecord {

  private final Session session;
  private final Bench bench;
  private final ScanFeed scans;

  ScanClosed(Session session, Bench bench, ScanFeed scans) {
    this.session = session;
    this.bench = bench;
    this.scans = scans;
  }

  @Override
  public void done(String filter, Entry entry, PanWatch pan) throws InterruptedException {
    session.progress(
        "Put " + filter + " into its bag, close it, scan it.",
        Map.of("event", "scan-bag", "filter", filter));
    while (true) {
      ScanFeed.Item item = pan.idle(scans::poll);
      if (item.end()) {
        throw new Problem.Refused(
            "The input ended before the bag of " + filter + " was scanned closed.",
            "Its mass is recorded.",
            "Scan it closed next time: preweigh --scan goes on with the next filter.");
      }
      if (!item.line().isBlank() && closed(filter, item.line())) {
        return;
      }
    }
  }

  private boolean closed(String filter, String line) {
    try {
      BagScan scan = BagScan.of(line);
      if (!scan.filter().text().equals(filter)) {
        throw new Problem.Refused(
            "That is the bag of " + scan.filter() + ", not of " + filter + ".",
            "Nothing was recorded for it.",
            "Put the filter into the right bag and scan that.");
      }
      bench.act(
          register -> {
            FilterState state = Filters.require(register, filter);
            Life.require(filter, state.status(), Act.CLOSE_BAG, state.role());
            return List.of(new Facts().put("filter", filter).draft("bag.closed"));
          });
      session.announce("closed " + filter, Map.of("event", "bag-closed", "filter", filter));
      return true;
    } catch (Problem.Refused e) {
      session.progress(e.what() + " " + e.next(), Map.of("event", "wrong-bag", "why", e.what()));
      return false;
    }
  }
}
