package org.siltbench.station.window.prepare;

import java.time.Duration;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.calc.method.Method;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Role;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.Spans;
import org.siltbench.station.work.Typed;
import org.siltbench.station.work.batch.NewBatch;
import org.siltbench.station.work.lot.LotList;
import org.siltbench.station.work.plan.FilterPlan;

/** How many filters a trip asks for, and the batch made of them. */
final class PlanModel {

  private static final int MOST = 100_000;

  /** The fields and what they start from. */
  private static final List<String> FIELDS =
      List.of(
          "every=15m",
          "length=6h",
          "sites=1",
          "trips=1",
          "field-pct=5",
          "duplicate-pct=10",
          "spare-pct=10",
          "controls=3",
          "lowest=",
          "highest=",
          "least-ml=50",
          "most-ml=1000",
          "target=5",
          "name=",
          "count=",
          "duplicates=0",
          "n-field=0",
          "n-trip=0",
          "n-method=0",
          "n-control=0",
          "n-reference=0",
          "n-spare=0");

  private static final Map<String, Role> ROLES =
      Map.of(
          "n-field", Role.FIELD_BLANK,
          "n-trip", Role.TRIP_BLANK,
          "n-method", Role.METHOD_BLANK,
          "n-control", Role.CONTROL,
          "n-reference", Role.REFERENCE,
          "n-spare", Role.SPARE);

  private final Desk desk;
  private final Texts texts;
  private final Told told;
  private final Consumer<BatchState> made;
  private final Map<String, StringProperty> fields = new LinkedHashMap<>();
  private final ObservableList<String> methods = FXCollections.observableArrayList();
  private final ObservableList<String> lots = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Optional<FilterPlan>> plan =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  final StringProperty method = new SimpleStringProperty("sm-2540d-23");
  final StringProperty lot = new SimpleStringProperty("");

  PlanModel(Desk desk, Consumer<BatchState> made) {
    this.desk = desk;
    this.texts = desk.texts(PlanModel.class);
    this.told = new Told(desk);
    this.made = made;
    for (String field : FIELDS) {
      int at = field.indexOf('=');
      fields.put(field.substring(0, at), new SimpleStringProperty(field.substring(at + 1)));
    }
  }

  StringProperty field(String key) {
    StringProperty field = fields.get(key);
    if (field == null) {
      throw new IllegalArgumentException("no field " + key);
    }
    return field;
  }

  ObservableList<String> methods() {
    return methods;
  }

  ObservableList<String> lots() {
    return lots;
  }

  /** What the plan came to. */
  ReadOnlyObjectProperty<Optional<FilterPlan>> plan() {
    return plan.getReadOnlyProperty();
  }

  private record Known(List<String> methods, List<String> lots) {}

  void refresh() {
    desk.work()
        .run(
            () ->
                new Known(
                    desk.methods().all().stream().map(Method::key).toList(),
                    LotList.all(desk.lab().register()).stream()
                        .map(line -> line.lot().name())
                        .toList()),
            this::show);
  }

  private void show(Known known) {
    if (!methods.equals(known.methods())) {
      String chosen = method.get();
      methods.setAll(known.methods());
      method.set(chosen);
    }
    if (!lots.equals(known.lots())) {
      String chosen = lot.get();
      lots.setAll(known.lots());
      lot.set(chosen.isEmpty() && !known.lots().isEmpty() ? known.lots().get(0) : chosen);
    }
  }

  private Map<String, String> typed() {
    Map<String, String> out = new HashMap<>();
    fields.forEach((key, field) -> out.put(key, field.get().strip()));
    return out;
  }

  /** Counts the filters and fills them into the batch below. */
  void count() {
    Map<String, String> typed = typed();
    String key = method.get();
    told.clear();
    desk.work().run(() -> counted(typed, key), this::fill, told::refuse);
  }

  private FilterPlan counted(Map<String, String> typed, String key) {
    FilterPlan counted =
        FilterPlan.of(
            new FilterPlan.Wish(
                span(typed, "every"),
                span(typed, "length"),
                whole(typed, "sites"),
                whole(typed, "trips"),
                number(typed, "field-pct"),
                number(typed, "duplicate-pct"),
                number(typed, "spare-pct"),
                whole(typed, "controls")));
    if (text(typed, "lowest").isEmpty()) {
      return counted;
    }
    double lowest = number(typed, "lowest");
    double highest = text(typed, "highest").isEmpty() ? lowest : number(typed, "highest");
    return counted.advised(
        desk.methods().get(key),
        new FilterPlan.Water(
            lowest,
            highest,
            number(typed, "least-ml"),
            number(typed, "most-ml"),
            number(typed, "target")));
  }

  private static String text(Map<String, String> typed, String key) {
    return typed.getOrDefault(key, "");
  }

  private Duration span(Map<String, String> typed, String key) {
    return Spans.parse(text(typed, key));
  }

  private int whole(Map<String, String> typed, String key) {
    return Typed.whole(texts.get("said." + key), text(typed, key), 0, 0, MOST);
  }

  private double number(Map<String, String> typed, String key) {
    return Typed.required(texts.get("said." + key), text(typed, key)).doubleValue();
  }

  private void fill(FilterPlan counted) {
    plan.set(Optional.of(counted));
    field("count").set(Integer.toString(counted.total()));
    field("duplicates").set(Integer.toString(counted.duplicates()));
    ROLES.forEach((key, role) -> field(key).set(Integer.toString(counted.of(role))));
  }

  /** Makes the batch. */
  void make() {
    Map<String, String> typed = typed();
    String key = method.get();
    String of = lot.get().strip();
    told.clear();
    desk.work().run(() -> made(typed, key, of), this::show, told::refuse);
  }

  private NewBatch.Made made(Map<String, String> typed, String key, String of) {
    Map<Role, Integer> roles = new EnumMap<>(Role.class);
    ROLES.forEach((field, role) -> roles.put(role, whole(typed, field)));
    desk.methods().get(key);
    return new NewBatch(
            text(typed, "name"), of, key, whole(typed, "count"), roles, whole(typed, "duplicates"))
        .record(desk.lab(), desk.methods());
  }

  private void show(NewBatch.Made done) {
    field("name").set("");
    BatchState batch = done.batch();
    told.done(
        texts.get(
            done.newLot() ? "made.new.lot" : "made",
            batch.name(),
            batch.filters().size(),
            batch.lot()));
    made.accept(batch);
  }
}
