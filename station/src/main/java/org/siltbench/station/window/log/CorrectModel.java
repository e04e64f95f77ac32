package org.siltbench.station.window.log;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.work.amend.Amend;
import org.siltbench.station.work.correct.Correction;
import org.siltbench.station.work.log.EntryList;

/** One field of the chosen entry gets another value, or the whole entry is taken back. */
final class CorrectModel {

  private final Desk desk;
  private final AmendModel amend;
  private final ObservableList<String> fields = FXCollections.observableArrayList();
  private Optional<EntryList.Shown> entry = Optional.empty();
  final StringProperty field = new SimpleStringProperty("");
  final StringProperty value = new SimpleStringProperty("");

  CorrectModel(Desk desk, AmendModel amend) {
    this.desk = desk;
    this.amend = amend;
    field.subscribe(this::proposed);
    value.subscribe(amend::typed);
  }

  AmendModel amend() {
    return amend;
  }

  /** The fields that can be set. */
  ObservableList<String> fields() {
    return fields;
  }

  void open(EntryList.Shown shown) {
    entry = Optional.of(shown);
    List<String> can =
        shown.fields().stream()
            .filter(EntryList.Field::correctable)
            .map(EntryList.Field::name)
            .toList();
    fields.setAll(can);
    field.set(can.isEmpty() ? "" : can.get(0));
    amend.anew();
  }

  /** Corrects this field next; it starts from the value in force. */
  void pick(String name) {
    if (fields.contains(name)) {
      field.set(name);
      proposed();
    }
  }

  private void proposed() {
    String name = field.get() == null ? "" : field.get();
    value.set(entry.map(shown -> shown.text(name)).orElse(""));
    amend.typed();
  }

  /** Shows what the new value would change. */
  void look() {
    look(Map.of(field.get() == null ? "" : field.get(), value.get().strip()));
  }

  /** Shows what would change without the entry. */
  void lookTakenBack() {
    look(Map.of("void", "true"));
  }

  private void look(Map<String, String> set) {
    String why = amend.reason.get();
    entry.ifPresent(
        shown ->
            amend.look(
                () -> Amend.of(new Correction(shown.entry().ref(), set, why), desk.methods())));
  }
}
