package org.siltbench.station.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.siltbench.station.Problem;
import org.siltbench.station.ledger.LedgerFile;
import org.siltbench.station.ledger.LineText;
import org.siltbench.station.ledger.Position;

/** Takes lines of other benches into their copies. Nothing that comes from outside is trusted. */
final class Reception {

  /** A clock value from outside moves this bench's own; it must not push it out of all reason. */
  private static final long YEAR_2200 = 7_258_118_400_000L;

  private final String own;
  private final Ledgers ledgers;
  private final Keeper keeper;

  Reception(String own, Ledgers ledgers, Keeper keeper) {
    this.own = own;
    this.ledgers = ledgers;
    this.keeper = keeper;
  }

  /** Returns how many lines were new; called with the lock held. */
  int take(String bench, List<String> lines) throws IOException {
    if (bench.equals(own) || Ledgers.benchOf(bench + ".jsonl").isEmpty()) {
      throw refused("They claim to be of bench \"" + bench + "\".");
    }
    LedgerFile file = ledgers.mirror(bench);
    if (file.unsure()) {
      file.recover();
    }
    keeper.catchUp(file);
    Position at = file.position();
    ByteArrayOutputStream fresh = new ByteArrayOutputStream();
    int taken = 0;
    for (String line : lines) {
      byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
      LineText.Link link = link(bytes);
      if (link.seq() > at.seq()) {
        at = follow(at, bench, link);
        fresh.write(bytes);
        fresh.write('\n');
        taken++;
      }
    }
    if (taken > 0) {
      file.appendVerbatim(fresh.toByteArray());
      keeper.catchUp(file);
    }
    return taken;
  }

  private static LineText.Link link(byte[] line) {
    try {
      return LineText.link(line);
    } catch (IOException e) {
      throw refused("A line cannot be taken: " + e.getMessage() + ".");
    }
  }

  private static Position follow(Position at, String bench, LineText.Link link) {
    if (link.hlc().millis() > YEAR_2200) {
      throw refused("The clock of bench " + bench + " says a year after 2200.");
    }
    boolean follows =
        link.bench().equals(bench)
            && link.seq() == at.seq() + 1
            && link.prev().equals(at.sum())
            && link.hlc().compareTo(at.hlc()) > 0;
    if (!follows) {
      throw refused(
          "Entry %d of bench %s does not follow entry %d that is here."
              .formatted(link.seq(), bench, at.seq()));
    }
    return new Position(bench, 0, 0, link.seq(), link.sum(), link.hlc(), "");
  }

  private static Problem.Refused refused(String why) {
    return new Problem.Refused(BenchSays.NOT_TAKEN_IN, why);
  }
}
