package org.siltbench.station.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/** Reads a whole ledger, changes nothing, and says where it is not what was written. */
public final class VerifyLedger {

  /**
   * One place that is not as it was written.
   *
   * @param bench whose ledger
   * @param seq the entry, or the one expected there
   * @param line line number from 1
   * @param says what is wrong, in a sentence
   */
  public record Finding(String bench, long seq, long line, Words says) {

    /** What is wrong, in English. */
    public String what() {
      return says.english();
    }
  }

  /**
   * What a ledger turned out to be.
   *
   * @param entries whole entries
   * @param seq place of the newest whole entry
   * @param head its hash
   * @param torn the last act was cut short while it was written; it was never acknowledged
   */
  public record Checked(
      String bench, long entries, long seq, String head, boolean torn, List<Finding> problems) {}

  private final String bench;
  private final Consumer<Line> visitor;
  private final List<Finding> problems = new ArrayList<>();
  private @Nullable Line before;
  private int unreadable;
  private long number;
  private long entries;
  private boolean torn;

  private VerifyLedger(String bench, Consumer<Line> visitor) {
    this.bench = bench;
    this.visitor = visitor;
  }

  /** Checks a file; the visitor sees every whole entry. */
  public static Checked file(Disk disk, Path path, String bench, Consumer<Line> visitor)
      throws IOException {
    VerifyLedger verify = new VerifyLedger(bench, visitor);
    try (Disk.File file = disk.read(path)) {
      Pieces pieces = new Pieces(file, 0);
      Pieces.@Nullable Piece piece = pieces.next();
      while (piece != null) {
        verify.check(piece, file);
        piece = verify.torn ? null : pieces.next();
      }
    }
    return verify.checked();
  }

  private Checked checked() {
    Line newest = before;
    torn = torn || (newest != null && unreadable == 0 && !newest.part().isLast());
    return newest == null
        ? new Checked(bench, entries, 0, LineText.NO_HASH, torn, List.copyOf(problems))
        : new Checked(
            bench, entries, newest.entry().ref().seq(), newest.sum(), torn, List.copyOf(problems));
  }

  private void check(Pieces.Piece piece, Disk.File file) throws IOException {
    number++;
    try {
      Line line = LineText.read(piece.entry(), piece.at());
      place(line);
      before = line;
      unreadable = 0;
      entries++;
      visitor.accept(line);
    } catch (BadLine e) {
      if (!e.newer() && Tail.torn(file, piece)) {
        torn = true;
      } else {
        find(expected(), Said.of(LedgerSays.FOUND_DAMAGED, e.why()));
        unreadable++;
      }
    }
  }

  private long expected() {
    return (before == null ? 0 : before.entry().ref().seq()) + unreadable + 1;
  }

  private void find(long seq, Words what) {
    problems.add(new Finding(bench, seq, number, what));
  }

  private void place(Line line) {
    EntryRef ref = line.entry().ref();
    if (!ref.bench().equals(bench)) {
      find(ref.seq(), Said.of(LedgerSays.FOUND_BENCH, ref.bench()));
    } else if (unreadable > 0) {
      afterGap(ref.seq());
    } else if (ref.seq() != expected()) {
      find(ref.seq(), Said.of(LedgerSays.FOUND_EXPECTED, expected()));
    } else if (!line.prev().equals(before == null ? LineText.NO_HASH : before.sum())) {
      find(ref.seq(), Said.of(LedgerSays.FOUND_CHANGED));
    } else if (before != null && line.entry().hlc().compareTo(before.entry().hlc()) <= 0) {
      find(ref.seq(), Said.of(LedgerSays.FOUND_CLOCK));
    } else if (!line.part().follows(before == null ? ActPart.ALONE : before.part())) {
      find(ref.seq(), Said.of(LedgerSays.FOUND_ACT));
    }
  }

  private void afterGap(long seq) {
    long last = before == null ? 0 : before.entry().ref().seq();
    if (seq <= last) {
      find(seq, Said.of(LedgerSays.FOUND_PAST, last));
    }
  }
}
