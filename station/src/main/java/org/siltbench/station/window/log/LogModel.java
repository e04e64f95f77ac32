package org.siltbench.station.window.log;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.ScanTaker;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.log.EntryList;
import org.siltbench.station.work.scan.BagScan;

/** The entries of a batch or a filter, the one chosen, and the part of the screen in front. */
final class LogModel implements ScanTaker {

  static final String ABOUT = "log";

  /** What is done with the log. */
  enum Part {
    READ,
    SWAP,
    FILTER,
    PROVE
  }

  private final Desk desk;
  private final ObservableList<BatchState> batches = FXCollections.observableArrayList();
  private final ObservableList<EntryList.Shown> entries = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Optional<EntryList.Shown>> chosen =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper filter = new ReadOnlyStringWrapper("");
  private final ObjectProperty<Part> part = new SimpleObjectProperty<>(Part.READ);
  private final ObjectProperty<@Nullable BatchState> batch = new SimpleObjectProperty<>();
  private final AmendModel correct;
  private final AmendModel swap;
  private final AmendModel judge;
  private final CorrectModel correction;
  private final SwapModel swapping;
  private final FilterModel judging;
  private final ProveModel prove;

  LogModel(Desk desk) {
    this.desk = desk;
    this.correct = new AmendModel(desk);
    this.swap = new AmendModel(desk);
    this.judge = new AmendModel(desk);
    this.correction = new CorrectModel(desk, correct);
    this.swapping = new SwapModel(swap);
    this.judging = new FilterModel(judge);
    this.prove = new ProveModel(desk);
    batch.subscribe(
        chosen -> {
          filter.set("");
          refresh();
        });
    desk.changesInFront(ABOUT, this::refresh);
  }

  ObservableList<BatchState> batches() {
    return batches;
  }

  ObjectProperty<@Nullable BatchState> batch() {
    return batch;
  }

  ObservableList<EntryList.Shown> entries() {
    return entries;
  }

  ReadOnlyObjectProperty<Optional<EntryList.Shown>> chosen() {
    return chosen.getReadOnlyProperty();
  }

  /** Only this filter's entries; empty for the whole batch. */
  ReadOnlyStringProperty filter() {
    return filter.getReadOnlyProperty();
  }

  ObjectProperty<Part> part() {
    return part;
  }

  CorrectModel correction() {
    return correction;
  }

  SwapModel swapping() {
    return swapping;
  }

  FilterModel judging() {
    return judging;
  }

  ProveModel prove() {
    return prove;
  }

  private record Look(List<BatchState> batches, List<EntryList.Shown> entries) {}

  /** Looks again. */
  void refresh() {
    BatchState wanted = batch.get();
    String only = filter.get();
    desk.work().run(() -> look(wanted, only), this::show);
  }

  private Look look(@Nullable BatchState wanted, String only) {
    RegisterView register = desk.lab().register();
    List<BatchState> all = Batches.all(register);
    BatchState of = wanted == null && !all.isEmpty() ? all.get(all.size() - 1) : wanted;
    if (!only.isEmpty()) {
      return new Look(all, EntryList.of(register, only));
    }
    return new Look(all, of == null ? List.of() : EntryList.of(register, of));
  }

  private void show(Look found) {
    if (!batches.equals(found.batches())) {
      BatchState now = batch.get();
      batches.setAll(found.batches());
      batch.set(now == null && !batches.isEmpty() ? batches.get(batches.size() - 1) : now);
    }
    entries.setAll(found.entries());
    Optional<EntryRef> before = chosen.get().map(shown -> shown.entry().ref());
    chosen.set(
        entries.stream().filter(one -> before.equals(Optional.of(one.entry().ref()))).findFirst());
    prove.of(batch.get());
  }

  /** Reads this entry. */
  void choose(EntryList.Shown shown) {
    if (!chosen.get().map(EntryList.Shown::entry).equals(Optional.of(shown.entry()))) {
      chosen.set(Optional.of(shown));
      correction.open(shown);
    }
  }

  /** The whole batch again. */
  void all() {
    filter.set("");
    refresh();
  }

  @Override
  public boolean scanned(BagScan bag) {
    String id = bag.filter().text();
    switch (part.get()) {
      case SWAP -> swapping.bag(id);
      case FILTER -> judging.filter.set(id);
      default -> {
        filter.set(id);
        refresh();
      }
    }
    return true;
  }
}
