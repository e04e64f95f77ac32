package org.siltbench.station.window.prepare;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Lists;
import org.siltbench.station.window.desk.ScanTaker;
import org.siltbench.station.work.batch.BatchCount;
import org.siltbench.station.work.scan.BagScan;

/** The batches, the one chosen, and the part of the screen in front. */
final class PrepareModel implements ScanTaker {

  /** The parts, in the order of the work. */
  enum Part {
    PLAN,
    LOT,
    PAPERS,
    TRIP,
    AUDIT
  }

  private final Desk desk;
  private final ObservableList<BatchCount> batches = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Optional<BatchState>> chosen =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ObjectProperty<Part> part = new SimpleObjectProperty<>(Part.PLAN);
  private final PlanModel plan;
  private final LotModel lot;
  private final PapersModel papers;
  private final TripModel trip;
  private final AuditModel audit;

  PrepareModel(Desk desk) {
    this.desk = desk;
    this.plan = new PlanModel(desk, this::choose);
    this.lot = new LotModel(desk);
    this.papers = new PapersModel(desk, chosen.getReadOnlyProperty());
    this.trip = new TripModel(desk, chosen.getReadOnlyProperty());
    this.audit = new AuditModel(desk, chosen.getReadOnlyProperty());
    desk.changesInFront("prepare", this::refresh);
  }

  ObservableList<BatchCount> batches() {
    return batches;
  }

  ReadOnlyObjectProperty<Optional<BatchState>> chosen() {
    return chosen.getReadOnlyProperty();
  }

  ObjectProperty<Part> part() {
    return part;
  }

  PlanModel plan() {
    return plan;
  }

  LotModel lot() {
    return lot;
  }

  PapersModel papers() {
    return papers;
  }

  TripModel trip() {
    return trip;
  }

  AuditModel audit() {
    return audit;
  }

  /** Looks again. */
  void refresh() {
    desk.work().run(() -> BatchCount.all(desk.lab().register()), this::show);
    plan.refresh();
    lot.refresh();
  }

  private void show(List<BatchCount> found) {
    Lists.follow(batches, found);
    if (chosen.get().isEmpty() && !found.isEmpty()) {
      choose(found.get(0).batch());
    }
  }

  /** Works with this batch from now on. */
  void choose(BatchState batch) {
    if (!chosen.get().equals(Optional.of(batch))) {
      chosen.set(Optional.of(batch));
    }
  }

  /** A bag brings its batch in front, and is named where bags are named. */
  @Override
  public boolean scanned(BagScan bag) {
    String code = bag.filter().batch().text();
    batches.stream()
        .map(BatchCount::batch)
        .filter(batch -> batch.code().equals(code))
        .findFirst()
        .ifPresent(this::choose);
    return switch (part.get()) {
      case TRIP -> trip.bag(bag);
      case AUDIT -> audit.bag(bag);
      default -> batches.stream().anyMatch(one -> one.batch().code().equals(code));
    };
  }
}
