package org.siltbench.station.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.HybridClock;
import org.siltbench.station.ledger.Kinds;
import org.siltbench.station.ledger.LedgerFile;
import org.siltbench.station.ledger.Line;
import org.siltbench.station.ledger.RealDisk;
import org.siltbench.station.register.Register;
import org.siltbench.station.register.RegisterFailed;
import org.siltbench.station.said.Said;

/**
 * Keeps the register in step with the ledgers, and makes it anew where it does not fit or fails.
 * Used by one thread at a time.
 */
final class Keeper implements AutoCloseable {

  private static final int AT_ONCE = 1000;

  private final Path folder;
  private final Setting setting;
  private final Guard guard;
  private final Ledgers ledgers;
  private final HybridClock clock = new HybridClock();
  private final List<Line> pending = new ArrayList<>();
  private final boolean inFile;
  private final Checkpoint checkpoint;
  private Register register;

  /** Opens the register and the ledgers; called with the lock held. */
  Keeper(Path folder, Setting setting, Guard guard, Ledgers ledgers, boolean owner)
      throws IOException {
    this.folder = folder.resolve("register");
    this.setting = setting;
    this.guard = guard;
    this.ledgers = ledgers;
    this.inFile = owner && setting.disk() instanceof RealDisk;
    this.checkpoint = new Checkpoint(this.folder, setting);
    this.register = opened();
    Set<String> known = register.positions().keySet();
    ledgers.discover(register.positions());
    for (LedgerFile file : ledgers.all()) {
      clock.see(file.position().hlc());
    }
    if (!ledgers.fit(known)) {
      renew();
    }
  }

  HybridClock clock() {
    return clock;
  }

  private Register opened() {
    if (!inFile) {
      return beside();
    }
    checkpoint.sweep();
    try {
      return file();
    } catch (RegisterFailed e) {
      return empty();
    }
  }

  /** Another process owns the file: a private copy of the newest checkpoint, else memory. */
  private Register beside() {
    if (setting.disk() instanceof RealDisk) {
      try {
        Optional<Path> copy = checkpoint.copy();
        if (copy.isPresent()) {
          return Register.inFile(copy.get(), setting.subjects(), ledgers, setting.notes());
        }
      } catch (IOException | RegisterFailed e) {
        checkpoint.drop();
      }
    }
    return Register.inMemory(setting.subjects(), ledgers, setting.notes());
  }

  private Register file() {
    return Register.inFile(
        folder.resolve("register"), setting.subjects(), ledgers, setting.notes());
  }

  private Register empty() {
    if (inFile) {
      try {
        for (String name : setting.disk().names(folder)) {
          Files.deleteIfExists(folder.resolve(name));
        }
        setting.disk().makeFolder(folder);
        return file();
      } catch (IOException | RegisterFailed e) {
        setting.notes().accept(Said.of(BenchSays.NOTE_IN_MEMORY, Elsewhere.words(e)));
      }
    }
    return Register.inMemory(setting.subjects(), ledgers, setting.notes());
  }

  /** Throws the register away and makes it anew from the ledgers. */
  void renew() throws IOException {
    renew(Count.NOBODY);
  }

  /** The same, telling how many entries were read. */
  void renew(Count count) throws IOException {
    closeRegister();
    register = empty();
    pending.clear();
    guard.locked(
        () -> {
          ledgers.all().forEach(LedgerFile::rewind);
          readAll(count);
          return true;
        });
  }

  private void closeRegister() {
    try {
      register.close();
    } catch (RegisterFailed e) {
      setting.notes().accept(Said.of(BenchSays.NOTE_NOT_CLOSED));
    }
  }

  /** Reads what was appended to the ledgers, by whomever; called with the lock held. */
  void catchUp() throws IOException {
    if (!ledgers.haveMore()) {
      return; // what was written here is applied with the next question
    }
    applyPending();
    try {
      readAll(Count.NOBODY);
    } catch (RegisterFailed e) {
      renew();
    }
  }

  private void readAll(Count count) throws IOException {
    long read = 0;
    for (LedgerFile file : List.copyOf(ledgers.all())) {
      read = readOn(file, read, count);
    }
  }

  private long readOn(LedgerFile file, long readBefore, Count count) throws IOException {
    long read = readBefore;
    long before = -1;
    while (file.hasMore() && file.position().end() != before) {
      before = file.position().end();
      List<Line> lines = file.readOn(AT_ONCE);
      for (Line line : lines) {
        see(file, line.entry());
      }
      register.apply(lines, file.position());
      read += lines.size();
      count.at("entries read", read);
    }
    return read;
  }

  private void see(LedgerFile file, Entry entry) {
    clock.see(entry.hlc());
    if (Kinds.stopsWriting(entry)) {
      file.block(
          "Entry %s is a \"%s\" (version %d) that this version does not know and must not ignore."
              .formatted(entry.ref(), entry.kind(), entry.kv()));
    }
  }

  /** Entries were written and forced here; they are applied when there is time. */
  void written(List<Line> lines) {
    pending.addAll(lines);
  }

  /** Applies what was written. The ledger is safe already, so a failure here only costs time. */
  void applyPending() {
    if (pending.isEmpty()) {
      return;
    }
    try {
      register.apply(List.copyOf(pending), ledgers.own().position());
      pending.clear();
    } catch (RegisterFailed e) {
      renewForAnswers();
    }
  }

  /** Asks the register; where it fails it is made anew and asked once more. */
  <T> T ask(Function<Register, T> question) {
    applyPending();
    try {
      return question.apply(register);
    } catch (RegisterFailed e) {
      renewForAnswers();
      return question.apply(register);
    }
  }

  boolean visit(long millis, Consumer<Entry> visitor, String... kinds) {
    applyPending();
    try {
      register.since(millis, visitor, kinds);
      return true;
    } catch (RegisterFailed e) {
      renewForAnswers();
      throw new Problem.Outside(e, BenchSays.REGISTER_DAMAGED);
    }
  }

  /** Reads on in one ledger only; called with the lock held. */
  void catchUp(LedgerFile file) throws IOException {
    applyPending();
    readOn(file, 0, Count.NOBODY);
  }

  private void renewForAnswers() {
    setting.notes().accept(Said.of(BenchSays.NOTE_RENEWED));
    try {
      renew();
    } catch (IOException e) {
      throw DiskTrouble.opening(folder, e);
    }
  }

  @Override
  public void close() {
    applyPending();
    long entries = inFile ? register.count() : 0;
    closeRegister();
    if (inFile) {
      checkpoint.keep(entries);
    } else {
      checkpoint.drop();
    }
  }
}
