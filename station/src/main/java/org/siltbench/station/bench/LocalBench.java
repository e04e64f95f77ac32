package org.siltbench.station.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.ledger.Kinds;
import org.siltbench.station.ledger.LabLock;
import org.siltbench.station.ledger.LedgerFile;
import org.siltbench.station.ledger.LineText;
import org.siltbench.station.ledger.Position;
import org.siltbench.station.register.Register;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Said;

/** The bench in a lab folder on this computer. */
final class LocalBench implements OpenLab {

  /** Below this, new work stops, so that what is open can still be closed in order. */
  private static final long KEEP_FREE = 16L << 20;

  private final Path folder;
  private final String code;
  private final Setting setting;
  private final Turns turns = new Turns();
  private final LabLock lock;
  private final Guard guard;
  private final Ledgers ledgers;
  private final Keeper keeper;
  private final RegisterView answers;
  private final Afterwards afterwards;
  private volatile String operator;

  LocalBench(Path folder, String code, Setting setting) throws IOException {
    this.folder = folder;
    this.code = code;
    this.setting = setting;
    this.operator = setting.operator();
    this.lock = LabLock.of(folder, setting.disk());
    this.guard = new Guard(lock, setting.notes());
    this.ledgers =
        new Ledgers(folder.resolve("ledger"), code, setting.disk(), lock, setting.notes());
    try {
      this.keeper = turns.call(this::opened);
      this.answers = new Answers(turns, keeper);
      this.afterwards = new Afterwards("bench " + code, turns, keeper::applyPending);
    } catch (RuntimeException e) {
      ledgers.close();
      lock.close();
      throw e;
    }
  }

  private Keeper opened() {
    try {
      return guard.locked(
          () -> {
            Keeper opened = new Keeper(folder, setting, guard, ledgers, lock.ownRegister());
            opened.catchUp();
            return opened;
          });
    } catch (IOException e) {
      throw DiskTrouble.opening(folder, e);
    }
  }

  @Override
  public boolean practice() {
    return answers
        .asWritten(new EntryRef(code, 1))
        .map(created -> Boolean.TRUE.equals(created.data().get("practice")))
        .orElse(false);
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public String operator() {
    return operator;
  }

  @Override
  public void operator(String initials) {
    Setting.requireOperator(initials);
    operator = initials;
  }

  @Override
  public Clock clock() {
    return setting.clock();
  }

  @Override
  public RegisterView register() {
    return answers;
  }

  @Override
  public Path folder() {
    return folder;
  }

  @Override
  public List<Entry> act(Function<RegisterView, List<Draft>> rule) {
    if (turns.isCurrent()) {
      throw new IllegalStateException("an act within an act");
    }
    return acted(() -> rule.apply(answers));
  }

  @Override
  public Entry closeDay() {
    return acted(() -> List.of(dayClosed(ledgers.own().position()))).get(0);
  }

  private Draft dayClosed(Position position) {
    try {
      BenchKey key = BenchKey.read(folder);
      String text = BenchKey.dayText(code, position.seq(), position.sum());
      String signature = key.sign(text);
      if (!key.open().equals(namedKey()) || !BenchKey.signed(text, signature, key.open())) {
        throw new IOException("it is not the key that the first entry of this bench names");
      }
      Map<String, @Nullable Object> data = new LinkedHashMap<>();
      data.put("head", position.sum());
      data.put("signature", signature);
      data.put("key", key.open());
      return new Draft("day.closed", 1, true, data);
    } catch (IOException e) {
      throw new Problem.Outside(e, BenchSays.KEY_UNUSABLE, Elsewhere.words(e));
    }
  }

  private @Nullable Object namedKey() {
    return answers
        .asWritten(new EntryRef(code, 1))
        .map(created -> created.data().get("key"))
        .orElse(null);
  }

  /** Done by the calling thread; the register follows when nobody wants anything. */
  private List<Entry> acted(Supplier<List<Draft>> rule) {
    List<Entry> act = changed(() -> lockedAct(rule));
    afterwards.due();
    return act;
  }

  /** Work that changes the lab's files, in this process's turn and under the lab's lock. */
  private <T> T changed(Guard.Work<T> work) {
    return turns.call(
        () -> {
          try {
            return guard.locked(work);
          } catch (IOException e) {
            throw DiskTrouble.writing(true, e);
          }
        });
  }

  /** What failed is taken back before another process can come and read it. */
  private List<Entry> lockedAct(Supplier<List<Draft>> rule) {
    try {
      if (ledgers.own().unsure()) {
        ledgers.own().recover();
      }
      keeper.catchUp();
      List<Draft> drafts = List.copyOf(rule.get());
      if (drafts.isEmpty()) {
        return List.of();
      }
      checkWritable(drafts);
      return write(drafts);
    } catch (IOException e) {
      throw DiskTrouble.writing(recovered(), e);
    }
  }

  /** False if it is not known whether the last entry reached the disk. */
  private boolean recovered() {
    try {
      if (ledgers.own().unsure()) {
        ledgers.own().recover();
      }
      return true;
    } catch (IOException e) {
      setting.notes().accept(Said.of(BenchSays.NOTE_DISK_FAILS, Elsewhere.words(e)));
      return false;
    }
  }

  @Override
  public Map<String, Position> ledgers() {
    return turns.call(
        () -> {
          Map<String, Position> positions = new LinkedHashMap<>();
          for (LedgerFile file : ledgers.all()) {
            positions.put(file.position().bench(), file.position());
          }
          return positions;
        });
  }

  @Override
  public List<String> lines(String bench, long after, int atMost) {
    return turns.call(() -> keeper.ask(register -> register.lines(bench, after, atMost)));
  }

  @Override
  public int receive(String bench, List<String> lines) {
    return changed(() -> new Reception(code, ledgers, keeper).take(bench, lines));
  }

  @Override
  public long rebuild(Count count) {
    return turns.call(
        () -> {
          try {
            keeper.renew(count);
            return keeper.ask(Register::count);
          } catch (IOException e) {
            throw DiskTrouble.opening(folder, e);
          }
        });
  }

  @Override
  public void export(Appendable out) {
    turns.call(
        () ->
            keeper.ask(
                register -> {
                  register.export(out);
                  return true;
                }));
  }

  @Override
  public void anchor(String kind, String where, String bench, long seq, String head) {
    String at = OffsetDateTime.now(setting.clock()).truncatedTo(ChronoUnit.MILLIS).toString();
    Anchor anchor = new Anchor(kind, where, bench, seq, head, at);
    changed(
        () -> {
          AnchorBook.add(setting.disk(), folder, anchor);
          return true;
        });
  }

  private void checkWritable(List<Draft> drafts) throws IOException {
    for (LedgerFile file : ledgers.all()) {
      String trouble = file.position().trouble();
      if (!trouble.isEmpty()) {
        throw new Problem.Outside(null, BenchSays.NOT_WRITABLE, trouble);
      }
    }
    long free = setting.disk().usableSpace(folder);
    if (free < KEEP_FREE) {
      throw DiskTrouble.nearlyFull(folder, free);
    }
    for (Draft draft : drafts) {
      if (!Kinds.known(draft.kind(), draft.kv())) {
        throw new IllegalArgumentException(
            "kind "
                + draft.kind()
                + " version "
                + draft.kv()
                + " is not in docs/ledger-entries.md");
      }
    }
  }

  /** The entries of one act reach the disk together, or none of them does. */
  private List<Entry> write(List<Draft> drafts) throws IOException {
    LedgerFile own = ledgers.own();
    List<Entry> act = new ArrayList<>(drafts.size());
    for (Draft draft : drafts) {
      act.add(stamped(draft, own.position().seq() + 1 + act.size()));
    }
    keeper.written(own.append(act));
    return act;
  }

  private Entry stamped(Draft draft, long seq) {
    OffsetDateTime now = OffsetDateTime.now(setting.clock()).truncatedTo(ChronoUnit.MILLIS);
    return new Entry(
        LineText.VERSION,
        new EntryRef(code, seq),
        now,
        keeper.clock().next(now.toInstant().toEpochMilli()),
        operator,
        draft.kind(),
        draft.kv(),
        draft.must(),
        draft.data());
  }

  @Override
  public void close() {
    if (turns.isCurrent()) {
      throw new IllegalStateException("a bench is not closed from within an act");
    }
    if (turns.close(this::closeFiles)) {
      afterwards.close();
    }
  }

  private void closeFiles() {
    try (lock;
        ledgers) {
      keeper.close();
    } catch (IOException e) {
      throw DiskTrouble.opening(folder, e);
    }
  }
}
