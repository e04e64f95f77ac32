package org.siltbench.station.work.preweigh;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Act;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Life;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.scan.BagScan;
import org.siltbench.station.work.weigh.PanWatch;

/** Waits until the bag of the filter just weighed is scanned closed. */
public final class CloseBag implements AfterRecord {

  /** Where scans come from, and who is told. */
  public interface Scans {
    /** The next scan if one is there, else null; throws where no more will come. */
    @Nullable String poll();

    /** The bag of this filter is asked for. */
    void asked(String filter);

    /** It is on the disk that this bag was closed. */
    void closed(String filter);

    /** Another bag was scanned, or none. */
    void wrong(Problem.Refused why);
  }

  private final Bench bench;
  private final Scans scans;

  public CloseBag(Bench bench, Scans scans) {
    this.bench = bench;
    this.scans = scans;
  }

  @Override
  public void done(String filter, Entry entry, PanWatch pan) throws InterruptedException {
    scans.asked(filter);
    boolean closed = false;
    while (!closed) {
      String line = pan.idle(scans::poll);
      closed = !line.isBlank() && close(filter, line);
    }
  }

  private boolean close(String filter, String line) {
    try {
      BagScan scan = BagScan.of(line);
      if (!scan.filter().text().equals(filter)) {
        throw new Problem.Refused(PreWeighSays.OTHER_BAG, scan.filter(), filter);
      }
      bench.act(
          register -> {
            FilterState state = Filters.require(register, filter);
            Life.require(filter, state.status(), Act.CLOSE_BAG, state.role());
            return List.of(new Facts().put("filter", filter).draft("bag.closed"));
          });
      scans.closed(filter);
      return true;
    } catch (Problem.Refused e) {
      scans.wrong(e);
      return false;
    }
  }
}
