package org.siltbench.station.command.weigh;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.work.preweigh.CloseBag;

/** Bags scanned closed on standard input. */
final class ScanClosed implements CloseBag.Scans {

  private final Session session;
  private final ScanFeed scans;
  private String filter = "";

  ScanClosed(Session session, ScanFeed scans) {
    this.session = session;
    this.scans = scans;
  }

  @Override
  public @Nullable String poll() {
    ScanFeed.Item item = scans.poll();
    if (item != null && item.end()) {
      throw new Problem.Refused(
          "The input ended before the bag of " + filter + " was scanned closed.",
          "Its mass is recorded.",
          "Scan it closed next time: preweigh --scan goes on with the next filter.");
    }
    return item == null ? null : item.line();
  }

  @Override
  public void asked(String wanted) {
    filter = wanted;
    session.progress(
        "Put " + wanted + " into its bag, close it, scan it.",
        Map.of("event", "scan-bag", "filter", wanted));
  }

  @Override
  public void closed(String done) {
    session.announce("closed " + done, Map.of("event", "bag-closed", "filter", done));
  }

  @Override
  public void wrong(Problem.Refused why) {
    session.progress(
        why.what() + " " + why.next(), Map.of("event", "wrong-bag", "why", why.what()));
  }
}
