package org.siltbench.station.fault;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import org.siltbench.station.ledger.LedgerFile;
import org.siltbench.station.ledger.Line;
import org.siltbench.station.ledger.Pen;
import org.siltbench.station.ledger.Position;
import org.siltbench.station.ledger.VerifyLedger;

/**
 * One seeded run of two processes that write one ledger on a faulty disk, turn by turn as the lab's
 * lock lets them: failed acts, failed attempts to take them back, kills, power cuts. It ends with
 * an error if an acknowledged entry is lost or changed, or if the file does not verify.
 */
public final class TwoWriters {

  /** What happened in a run. */
  public record Outcome(
      int acknowledged, int failedWrites, int failedRecoveries, int handOvers, int powerCuts) {}

  private static final Path PATH = Path.of("ledger", "BT24.jsonl");
  private static final FaultyDisk.Rates NONE = new FaultyDisk.Rates(0, 0, 0, 0);
  private static final int LIVES = 4;
  private static final int TURNS = 24;

  private final Random random;
  private final FaultyDisk disk;
  private final FaultEntries entries;
  private final Supplier<Pen> pens;
  private final List<String> acknowledged = new ArrayList<>();
  private final LedgerFile[] writers = new LedgerFile[2];
  private int failedWrites;
  private int failedRecoveries;
  private int handOvers;
  private int powerCuts;

  private TwoWriters(long seed, Supplier<Pen> pens) {
    this.random = new Random(seed);
    this.disk = new FaultyDisk(random);
    this.entries = new FaultEntries(random);
    this.pens = pens;
  }

  /** Runs one seed. */
  public static Outcome of(long seed) {
    return of(seed, new SharedPen()::holder);
  }

  /** The same with pens of another kind, one for each start of a process. */
  static Outcome of(long seed, Supplier<Pen> pens) {
    try {
      return new TwoWriters(seed, pens).run();
    } catch (IOException e) {
      throw new AssertionError("seed " + seed, e);
    }
  }

  private Outcome run() throws IOException {
    for (int life = 0; life < LIVES; life++) {
      live();
    }
    disk.rates(NONE);
    if (random.nextBoolean()) {
      disk.restart();
    }
    start(0);
    readOn(writers[0]);
    VerifyLedger.Checked checked = VerifyLedger.file(disk, PATH, "BT24", line -> {});
    if (!checked.problems().isEmpty() || checked.entries() != acknowledged.size()) {
      throw new AssertionError("does not verify: " + checked);
    }
    return new Outcome(acknowledged.size(), failedWrites, failedRecoveries, handOvers, powerCuts);
  }

  private void live() throws IOException {
    try {
      disk.rates(NONE);
      start(0);
      start(1);
      disk.rates(
          new FaultyDisk.Rates(
              1 + random.nextInt(4),
              3 + random.nextInt(20),
              2 + random.nextInt(10),
              20 + random.nextInt(400)));
      for (int turn = 0, last = 0; turn < TURNS; turn++) {
        int writer = random.nextInt(2);
        handOvers += writer == last ? 0 : 1;
        last = writer;
        turn(writer);
      }
    } catch (PowerCut e) {
      powerCuts++;
      disk.restart();
    }
  }

  /** A process starts, or is killed and starts again: nothing that was open is put in order. */
  private void start(int writer) throws IOException {
    Position from = Position.start("BT24");
    writers[writer] = new LedgerFile(disk, PATH, false, from, pens.get(), note -> {});
  }

  /** What a bench does while it holds the lab's lock. */
  private void turn(int writer) throws IOException {
    if (random.nextInt(12) == 0) {
      start(writer);
    }
    LedgerFile file = writers[writer];
    try {
      if (file.unsure()) {
        file.recover();
      }
      readOn(file);
      file.append(entries.act(file.position().seq() + 1))
          .forEach(line -> acknowledged.add(line.sum()));
    } catch (IOException e) {
      failedWrites++;
      if (file.unsure() && random.nextInt(4) > 0) { // else it is killed, or the next turn tries
        recover(file);
      }
    }
  }

  private void recover(LedgerFile file) {
    try {
      file.recover();
    } catch (IOException e) {
      failedRecoveries++;
    }
  }

  private void readOn(LedgerFile file) throws IOException {
    int from = (int) file.position().seq();
    List<String> sums = file.readOn(Integer.MAX_VALUE).stream().map(Line::sum).toList();
    List<String> expected = acknowledged.subList(from, acknowledged.size());
    if (!file.position().trouble().isEmpty()
        || sums.size() < expected.size()
        || !sums.subList(0, expected.size()).equals(expected)) {
      throw new AssertionError("acknowledged entries are lost: " + file.position().trouble());
    }
    acknowledged.addAll(sums.subList(expected.size(), sums.size()));
  }
}
