package org.siltbench.station.window.settings;

import java.util.List;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.people.Person;
import org.siltbench.station.people.Right;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.Segments;

/** Who may work here. */
final class PeoplePane extends VBox {

  private Right right = Right.WEIGH;

  PeoplePane(SettingsModel model, Texts texts) {
    Grid<Person> table =
        new Grid<>(texts, "people", "people.none", model.people())
            .column("initials", 40, Person::initials)
            .column("right", 60, p -> texts.get("right." + p.right().code()).replace("_", ""));
    VBox.setVgrow(table, Priority.ALWAYS);
    getStyleClass().add("sheet");
    getChildren()
        .addAll(
            Controls.text(texts, "people.hint", "hint"),
            table,
            Controls.button(texts, "person.remove", () -> table.selected(model::remove)),
            form(model, texts));
  }

  private VBox form(SettingsModel model, Texts texts) {
    TextField initials = new TextField();
    PasswordField pin = new PasswordField();
    PasswordField again = new PasswordField();
    PasswordField badge = new PasswordField();
    Segments rights =
        new Segments(
            texts, "right.", List.of("read", "weigh", "supervise"), word -> right = Right.of(word));
    rights.show(right.code());
    HBox fields =
        new HBox(
            Controls.field(texts, "person.initials", initials),
            rights,
            Controls.field(texts, "person.pin", pin),
            Controls.field(texts, "person.again", again),
            Controls.field(texts, "badge", badge));
    fields.getStyleClass().add("line");
    VBox card =
        new VBox(
            fields,
            Controls.primary(
                texts,
                "person.add",
                () -> {
                  model.register(
                      initials.getText(),
                      right,
                      pin.getText().toCharArray(),
                      again.getText().toCharArray(),
                      badge.getText());
                  pin.clear();
                  again.clear();
                  badge.clear();
                }));
    card.getStyleClass().add("card");
    return card;
  }
}
