package org.siltbench.station.fault;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.siltbench.station.ledger.ActPart;
import org.siltbench.station.ledger.LedgerFile;
import org.siltbench.station.ledger.Line;
import org.siltbench.station.ledger.Pen;
import org.siltbench.station.ledger.Position;
import org.siltbench.station.ledger.VerifyLedger;

/**
 * One seeded run of a ledger on a faulty disk: appends, failures, power cuts, restarts. It ends
 * with an error if an acknowledged entry is lost or changed, or if the file does not verify.
 */
public final class FaultRun {

  /** What happened in a run. */
  public record Outcome(
      int acknowledged,
      int failedWrites,
      int powerCuts,
      int tornTails,
      int keptUnacknowledged,
      int failedRecoveries) {}

  private static final Path PATH = Path.of("ledger", "BT24.jsonl");
  private static final int LIVES = 4;
  private static final int APPENDS = 8;

  private final Random random;
  private final FaultyDisk disk;
  private final FaultEntries entries;
  private final List<String> acknowledged = new ArrayList<>();
  private Position known = Position.start("BT24");
  private int failedWrites;
  private int powerCuts;
  private int tornTails;
  private int kept;
  private int failedRecoveries;

  private FaultRun(long seed) {
    random = new Random(seed);
    disk = new FaultyDisk(random);
    entries = new FaultEntries(random);
  }

  /** Runs one seed. */
  public static Outcome of(long seed) {
    try {
      return new FaultRun(seed).run();
    } catch (IOException e) {
      throw new AssertionError("seed " + seed, e);
    }
  }

  private Outcome run() throws IOException {
    for (int life = 0; life < LIVES; life++) {
      live();
    }
    disk.rates(new FaultyDisk.Rates(0, 0, 0, 0));
    open(0).close();
    VerifyLedger.Checked checked = VerifyLedger.file(disk, PATH, "BT24", line -> {});
    if (!checked.problems().isEmpty() || checked.entries() != acknowledged.size()) {
      throw new AssertionError("does not verify: " + checked);
    }
    return new Outcome(
        acknowledged.size(), failedWrites, powerCuts, tornTails, kept, failedRecoveries);
  }

  private void live() throws IOException {
    try {
      disk.rates(new FaultyDisk.Rates(0, 0, 0, 0));
      LedgerFile file = open(random.nextBoolean() ? 8 : 0);
      disk.rates(
          new FaultyDisk.Rates(
              1 + random.nextInt(4),
              3 + random.nextInt(20),
              3 + random.nextInt(20),
              10 + random.nextInt(60)));
      for (int i = 0; i < APPENDS && !file.unsure(); i++) {
        append(file);
      }
      file.close();
      if (random.nextBoolean()) {
        disk.restart();
      }
    } catch (PowerCut e) {
      powerCuts++;
      disk.restart();
    }
  }

  /** Opens at the start or where a register had left off; power may go while the end is mended. */
  private LedgerFile open(int cut) throws IOException {
    Position from = random.nextBoolean() ? known : Position.start("BT24");
    LedgerFile file = new LedgerFile(disk, PATH, false, from, Pen.ALONE, note -> tornTails++);
    if (!file.fitsPosition()) {
      throw new AssertionError("an acknowledged entry cannot be read again");
    }
    disk.rates(new FaultyDisk.Rates(0, 0, 0, cut));
    List<Line> lines = file.readOn(Integer.MAX_VALUE);
    if (!lines.isEmpty()) {
      ActPart last = lines.get(lines.size() - 1).part();
      if (last.place() != last.of()) {
        throw new AssertionError("an act was kept in part: " + last);
      }
    }
    check(lines.stream().map(Line::sum).toList(), (int) from.seq(), file.position());
    known = file.position();
    return file;
  }

  private void check(List<String> sums, int from, Position position) {
    List<String> expected = acknowledged.subList(from, acknowledged.size());
    if (!position.trouble().isEmpty()
        || sums.size() < expected.size()
        || !sums.subList(0, expected.size()).equals(expected)) {
      throw new AssertionError("acknowledged entries are lost: " + position.trouble());
    }
    List<String> more = sums.subList(expected.size(), sums.size());
    kept += more.size();
    acknowledged.addAll(more);
  }

  private void append(LedgerFile file) {
    try {
      file.append(entries.act(file.position().seq() + 1))
          .forEach(line -> acknowledged.add(line.sum()));
      known = file.position();
    } catch (IOException e) {
      failedWrites++;
      recover(file);
    }
  }

  /** Tries as a bench does; where that fails too, it stops until the next opening. */
  private void recover(LedgerFile file) {
    for (int tries = 0; tries < 3 && file.unsure(); tries++) {
      try {
        file.recover();
      } catch (IOException e) {
        failedRecoveries++;
      }
    }
  }
}
