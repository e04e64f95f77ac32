package org.siltbench.station.window.prepare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Lists;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.Typed;
import org.siltbench.station.work.lot.BlankLossTest;
import org.siltbench.station.work.lot.LotList;
import org.siltbench.station.work.lot.MassWindow;
import org.siltbench.station.work.lot.NewLot;

/** The makers' lots: described once, tested for what they lose, their masses within a window. */
final class LotModel {

  private static final List<String> FIELDS =
      List.of("lot.name", "maker", "material", "pore", "diameter", "window", "losses", "area");

  private final Desk desk;
  private final Texts texts;
  private final Told told;
  private final ObservableList<LotList.Line> lots = FXCollections.observableArrayList();
  private final Map<String, StringProperty> fields = new TreeMap<>();
  final BooleanProperty washed = new SimpleBooleanProperty(true);
  final BooleanProperty dried = new SimpleBooleanProperty(true);
  final BooleanProperty muffled = new SimpleBooleanProperty();
  final StringProperty tested = new SimpleStringProperty("");

  LotModel(Desk desk) {
    this.desk = desk;
    this.texts = desk.texts(LotModel.class);
    this.told = new Told(desk);
    FIELDS.forEach(key -> fields.put(key, new SimpleStringProperty("")));
    fields.put("limit", new SimpleStringProperty(BlankLossTest.ISO_LIMIT.toPlainString()));
  }

  ObservableList<LotList.Line> lots() {
    return lots;
  }

  StringProperty field(String key) {
    StringProperty field = fields.get(key);
    if (field == null) {
      throw new IllegalArgumentException("no field " + key);
    }
    return field;
  }

  void refresh() {
    desk.work().run(() -> LotList.all(desk.lab().register()), this::show);
  }

  private void show(List<LotList.Line> found) {
    Lists.follow(lots, found);
    if (tested.get().isEmpty() && !found.isEmpty()) {
      tested.set(found.get(0).lot().name());
    }
  }

  private Map<String, String> typed() {
    Map<String, String> out = new TreeMap<>();
    fields.forEach((key, field) -> out.put(key, field.get().strip()));
    return out;
  }

  private static @Nullable String known(Map<String, String> typed, String key) {
    String text = typed.getOrDefault(key, "");
    return text.isEmpty() ? null : text;
  }

  private @Nullable BigDecimal number(Map<String, String> typed, String key) {
    return Typed.decimal(texts.get("said." + key), typed.getOrDefault(key, ""));
  }

  /** Describes a lot. */
  void describe() {
    Map<String, String> typed = typed();
    boolean[] done = {washed.get(), dried.get(), muffled.get()};
    told.clear();
    desk.work().run(() -> lot(typed, done).record(desk.lab()), entry -> described(), told::refuse);
  }

  private NewLot lot(Map<String, String> typed, boolean[] done) {
    String window = known(typed, "window");
    return new NewLot(
        typed.getOrDefault("lot.name", ""),
        known(typed, "maker"),
        known(typed, "material"),
        number(typed, "pore"),
        number(typed, "diameter"),
        done[0],
        done[1],
        done[2],
        window == null ? null : MassWindow.parse(window.replace(',', '.')));
  }

  private void described() {
    String name = field("lot.name").get();
    List.of("lot.name", "maker", "material", "pore", "diameter", "window")
        .forEach(key -> field(key).set(""));
    tested.set(name);
    told.done(texts.get("lot.done", name));
  }

  /** Judges and records the blank-loss test. */
  void test() {
    Map<String, String> typed = typed();
    String lot = tested.get();
    told.clear();
    desk.work()
        .run(
            () ->
                new BlankLossTest(
                        lot,
                        losses(typed.getOrDefault("losses", "")),
                        number(typed, "area"),
                        Typed.required(texts.get("said.limit"), typed.getOrDefault("limit", "")))
                    .record(desk.lab()),
            this::judged,
            told::refuse);
  }

  /** Blanks or semicolons part the losses; a comma is a decimal mark. */
  private List<BigDecimal> losses(String text) {
    List<BigDecimal> out = new ArrayList<>();
    for (String one : text.split("[;\\s]+")) {
      if (!one.isEmpty()) {
        out.add(Typed.required(texts.get("said.losses"), one));
      }
    }
    return out;
  }

  private void judged(BlankLossTest.Verdict verdict) {
    field("losses").set("");
    told.done(
        texts.get(
            verdict.pass() ? "lot.passed" : "lot.failed", tested.get(), verdict.worstMgCm2()));
  }
}
