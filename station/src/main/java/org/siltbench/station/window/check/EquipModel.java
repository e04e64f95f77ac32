package org.siltbench.station.window.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.Typed;
import org.siltbench.station.work.check.CheckWeight;
import org.siltbench.station.work.equip.BalanceRecord;
import org.siltbench.station.work.equip.RoomLog;
import org.siltbench.station.work.equip.RoomRecord;
import org.siltbench.station.work.equip.WeightRecord;

/** What is on record of the balance, the check weights and the room. */
final class EquipModel {

  /**
   * The balance that is listened to.
   *
   * @param name the name its weighings get; empty where there is no balance
   * @param record what was recorded of it
   */
  record Known(String name, Optional<BalanceRecord> record) {}

  private static final String ABOUT = "equip";

  private final Desk desk;
  private final Texts texts;
  private final ReadOnlyObjectWrapper<Known> balance =
      new ReadOnlyObjectWrapper<>(new Known("", Optional.empty()));
  private final ObservableList<CheckWeight> weights = FXCollections.observableArrayList();
  private final ObservableList<RoomLog.Note> room = FXCollections.observableArrayList();

  EquipModel(Desk desk) {
    this.desk = desk;
    this.texts = desk.texts(EquipModel.class);
    desk.changesInFront("check", this::refresh);
  }

  ReadOnlyObjectProperty<Known> balance() {
    return balance.getReadOnlyProperty();
  }

  ObservableList<CheckWeight> weights() {
    return weights;
  }

  ObservableList<RoomLog.Note> room() {
    return room;
  }

  private record Looked(Known balance, List<CheckWeight> weights, List<RoomLog.Note> room) {}

  /** Looks again. */
  void refresh() {
    desk.work()
        .run(
            () -> {
              var register = desk.lab().register();
              String name = desk.balanceName();
              return new Looked(
                  new Known(name, BalanceRecord.of(register, name)),
                  CheckWeight.all(register),
                  RoomLog.of(register, desk.lab().code()));
            },
            now -> {
              balance.set(now.balance());
              weights.setAll(now.weights());
              room.setAll(now.room());
            });
  }

  /** Records the balance as the fields say; its link is the one that is open. */
  void recordBalance(Function<String, String> typed) {
    record("saved.balance", () -> balance(typed).record(desk.lab()));
  }

  private BalanceRecord balance(Function<String, String> typed) {
    Optional<BalanceRecord> before = balance.get().record();
    String where =
        desk.balance()
            .map(live -> BalanceRecord.where(live.spec()))
            .or(() -> before.map(BalanceRecord::where))
            .orElse(null);
    return new BalanceRecord(
        typed.apply("name"),
        where,
        Typed.text(typed.apply("serial")),
        Typed.decimal(texts.get("resolution"), typed.apply("resolution")),
        Typed.decimal(texts.get("capacity"), typed.apply("capacity")),
        Typed.day(texts.get("calibrated"), typed.apply("calibrated")),
        Typed.day(texts.get("due"), typed.apply("due")),
        Typed.decimal(texts.get("certificate.u"), typed.apply("certificate.u")),
        Typed.decimal(texts.get("linearity"), typed.apply("linearity")),
        Typed.decimal(texts.get("eccentricity"), typed.apply("eccentricity")),
        Typed.decimal(texts.get("repeatability"), typed.apply("repeatability")));
  }

  /** Records a check weight with its certificate. */
  void recordWeight(Function<String, String> typed) {
    record("saved.weight", () -> weight(typed).record(desk.lab()));
  }

  private WeightRecord weight(Function<String, String> typed) {
    BigDecimal k = Typed.decimal("k", typed.apply("k"));
    return new WeightRecord(
        typed.apply("weight.name"),
        mass("nominal", typed),
        mass("certified", typed),
        Typed.required(texts.get("expanded"), typed.apply("expanded")),
        k == null ? BigDecimal.valueOf(2) : k,
        Typed.text(typed.apply("certificate")),
        Typed.day(texts.get("weight.due"), typed.apply("weight.due")));
  }

  private Mass mass(String key, Function<String, String> typed) {
    return Mass.ofGrams(Typed.required(texts.get(key), typed.apply(key)).toPlainString());
  }

  /** Notes the air of the room. */
  void noteRoom(Function<String, String> typed) {
    record(
        "saved.room",
        () ->
            new RoomRecord(
                    Typed.decimal(texts.get("temperature"), typed.apply("temperature")),
                    Typed.decimal(texts.get("pressure"), typed.apply("pressure")),
                    Typed.decimal(texts.get("humidity"), typed.apply("humidity")),
                    Typed.past(texts.get("noted"), typed.apply("noted"), desk.clock()))
                .record(desk.lab()));
  }

  private void record(String said, Supplier<Entry> act) {
    desk.work()
        .run(
            act,
            entry -> {
              desk.changed();
              desk.notices().show(Notice.note(ABOUT, texts.get(said, entry.ref().toString())));
            },
            problem -> desk.notices().show(ABOUT, problem));
  }
}
