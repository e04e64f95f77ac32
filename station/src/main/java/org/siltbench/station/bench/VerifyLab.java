package org.siltbench.station.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.ledger.Disk;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.Line;
import org.siltbench.station.ledger.RealDisk;
import org.siltbench.station.ledger.VerifyLedger;
import org.siltbench.station.ledger.VerifyLedger.Checked;
import org.siltbench.station.ledger.VerifyLedger.Finding;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/** Reads all ledgers of a lab folder and compares them with what is known outside of them. */
public final class VerifyLab {

  /** An anchor, and whether the ledger still holds it. */
  public record Compared(Anchor anchor, boolean holds) {}

  /**
   * What was found.
   *
   * @param bench this bench
   * @param ledgers every ledger in the folder, by bench
   * @param anchors what was compared
   * @param setAside files beside the ledgers that hold torn lines
   * @param problems what is not as it was written
   */
  public record Report(
      String bench,
      Map<String, Checked> ledgers,
      List<Compared> anchors,
      List<String> setAside,
      List<Finding> problems) {

    /** True if nothing is wrong. */
    public boolean ok() {
      return problems.isEmpty();
    }

    /** This bench's own ledger. */
    public @Nullable Checked own() {
      return ledgers.get(bench);
    }
  }

  private static final Pattern PRINTED = Pattern.compile("[0-9a-f]{8,64}");

  /** So many lines are read between two words to whoever counts. */
  private static final int SOME = 1000;

  private final Path folder;
  private final Disk disk = new RealDisk();
  private final List<Anchor> anchors = new ArrayList<>();
  private final Map<Anchor, Boolean> holds = new LinkedHashMap<>();
  private final Map<String, String> keys = new LinkedHashMap<>();
  private final List<Finding> problems = new ArrayList<>();

  private final Count count;
  private long read;

  private VerifyLab(Path folder, Count count) {
    this.folder = folder;
    this.count = count;
  }

  /**
   * Verifies a lab folder, or a backup of one. Changes nothing.
   *
   * @param more anchors beside those the folder remembers
   */
  public static Report of(Path folder, List<Anchor> more) {
    return of(folder, more, Count.NOBODY);
  }

  /** The same, telling how many lines were read. */
  public static Report of(Path folder, List<Anchor> more, Count count) {
    try {
      return new VerifyLab(folder, count).run(more);
    } catch (IOException e) {
      throw new Problem.Outside(e, BenchSays.LEDGER_UNREADABLE, folder, Elsewhere.words(e));
    }
  }

  /** The anchor that a printed hash is; blanks and capitals do not matter. */
  public static Anchor paper(String bench, String printed) {
    String hash = printed.replaceAll("[\\s-]", "").toLowerCase(java.util.Locale.ROOT);
    if (!PRINTED.matcher(hash).matches()) {
      throw new Problem.WrongUse(BenchSays.NO_HASH, printed);
    }
    return new Anchor("paper", "given", bench, 0, hash, "");
  }

  /** The newest hashes in another lab folder or backup, as anchors. */
  public static List<Anchor> backup(Path backup) {
    return backup(backup, Count.NOBODY);
  }

  /** The same, telling how many lines were read. */
  public static List<Anchor> backup(Path backup, Count count) {
    List<Anchor> heads = new ArrayList<>();
    of(backup, List.of(), count)
        .ledgers()
        .forEach(
            (bench, checked) ->
                heads.add(
                    new Anchor(
                        "backup", backup.toString(), bench, checked.seq(), checked.head(), "")));
    return heads;
  }

  private Report run(List<Anchor> more) throws IOException {
    String own = LabFolder.readCode(folder);
    List<String> unread = new ArrayList<>();
    anchors.addAll(AnchorBook.read(folder, unread));
    unread.forEach(line -> problems.add(new Finding(own, 0, 0, Said.of(BenchSays.FOUND_ANCHORS))));
    anchors.addAll(more);
    anchors.forEach(anchor -> holds.put(anchor, false));
    Map<String, Checked> ledgers = new LinkedHashMap<>();
    List<String> setAside = new ArrayList<>();
    for (String name : disk.names(folder.resolve("ledger"))) {
      String bench = Ledgers.benchOf(name);
      if (!bench.isEmpty()) {
        ledgers.put(bench, check(bench, folder.resolve("ledger").resolve(name)));
      } else {
        setAside.add(name);
      }
    }
    if (!ledgers.containsKey(own)) {
      problems.add(new Finding(own, 1, 1, Said.of(BenchSays.FOUND_NO_LEDGER)));
    }
    holds.keySet().removeIf(anchor -> isAhead(anchor, own, ledgers));
    return new Report(own, ledgers, compared(), setAside, List.copyOf(problems));
  }

  /** A server may have more of another bench than was fetched; of this bench it may not. */
  private static boolean isAhead(Anchor anchor, String own, Map<String, Checked> ledgers) {
    Checked here = ledgers.get(anchor.bench());
    return anchor.kind().equals("server")
        && !anchor.bench().equals(own)
        && anchor.seq() > (here == null ? 0 : here.seq());
  }

  private Checked check(String bench, Path path) throws IOException {
    Checked checked = VerifyLedger.file(disk, path, bench, line -> see(bench, line));
    problems.addAll(checked.problems());
    return checked;
  }

  private void see(String bench, Line line) {
    read++;
    if (read % SOME == 0) {
      count.at("lines read", read);
    }
    for (Anchor anchor : anchors) {
      boolean here =
          anchor.seq() == 0
              || (anchor.seq() == line.entry().ref().seq() && anchor.bench().equals(bench));
      if (here && line.sum().startsWith(anchor.head())) {
        holds.put(anchor, true);
      }
    }
    Entry entry = line.entry();
    if (entry.kind().equals("bench.created") && entry.data().get("key") instanceof String key) {
      keys.putIfAbsent(bench, key);
    }
    if (entry.kind().equals("day.closed")) {
      checkDay(bench, line);
    }
  }

  private void checkDay(String bench, Line line) {
    Entry entry = line.entry();
    long seq = entry.ref().seq() - 1;
    String head = String.valueOf(entry.data().get("head"));
    String key = String.valueOf(entry.data().get("key"));
    String signature = String.valueOf(entry.data().get("signature"));
    if (!key.equals(keys.get(bench))) {
      find(line, Said.of(BenchSays.FOUND_KEY));
    } else if (!head.equals(line.prev())) {
      find(line, Said.of(BenchSays.FOUND_HEAD));
    } else if (!BenchKey.signed(BenchKey.dayText(bench, seq, head), signature, key)) {
      find(line, Said.of(BenchSays.FOUND_SIGNATURE));
    }
  }

  private void find(Line line, Words what) {
    long seq = line.entry().ref().seq();
    problems.add(new Finding(line.entry().ref().bench(), seq, seq, what));
  }

  private List<Compared> compared() {
    List<Compared> compared = new ArrayList<>();
    holds.forEach(
        (anchor, held) -> {
          compared.add(new Compared(anchor, held));
          if (!held) {
            problems.add(new Finding(anchor.bench(), anchor.seq(), anchor.seq(), missing(anchor)));
          }
        });
    return compared;
  }

  private static Words missing(Anchor anchor) {
    return Said.of(
        anchor.seq() == 0 ? BenchSays.FOUND_CUT : BenchSays.FOUND_CUT_AT,
        anchor.head().substring(0, Math.min(16, anchor.head().length())),
        anchor.kind(),
        anchor.where(),
        anchor.seq());
  }
}
