package org.siltbench.station.window.prepare;

import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.converter.DefaultStringConverter;
import org.siltbench.station.life.Role;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Choices;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.FocusScroll;
import org.siltbench.station.window.look.Sheet;
import org.siltbench.station.work.plan.FilterPlan;

/** The planner above, the batch it makes below. */
final class PlanPane extends VBox {

  private final Texts texts;
  private final Label counted = Controls.label("row-title");
  private final Label advice = Controls.label();

  PlanPane(PlanModel model, Texts texts) {
    this.texts = texts;
    counted.setId("counted");
    advice.setId("advice");
    VBox inside =
        new VBox(
            plan(model),
            Controls.acts(Controls.primary(texts, "plan.count", model::count)),
            counted,
            advice,
            Controls.text(texts, "batch.new", "subtitle"),
            batch(model));
    inside.getStyleClass().add("form");
    FocusScroll scroll = new FocusScroll(inside);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getStyleClass().addAll("card", "form");
    getChildren().setAll(scroll, Controls.acts(Controls.primary(texts, "batch.make", model::make)));
    model.plan().subscribe(this::show);
  }

  private Sheet plan(PlanModel model) {
    Sheet form = new Sheet(texts, 5, model::count);
    for (String key : new String[] {"every", "length", "sites"}) {
      form.text(key, model.field(key));
    }
    form.choice("method", model.methods(), key -> key, model.method, 2);
    for (String key :
        new String[] {
          "trips",
          "field-pct",
          "duplicate-pct",
          "spare-pct",
          "controls",
          "target",
          "lowest",
          "highest",
          "least-ml",
          "most-ml"
        }) {
      form.text(key, model.field(key));
    }
    return form;
  }

  private Sheet batch(PlanModel model) {
    Sheet form = new Sheet(texts, 5, model::make);
    form.text("name", model.field("name"), 2);
    ComboBox<String> lot = Choices.of(model.lots(), name -> name);
    lot.setEditable(true);
    lot.setConverter(new DefaultStringConverter());
    lot.getEditor().textProperty().bindBidirectional(model.lot);
    lot.setMaxWidth(Double.MAX_VALUE);
    form.add(Controls.captioned(texts, "lot", lot), 2);
    for (String key :
        new String[] {
          "count",
          "duplicates",
          "n-field",
          "n-trip",
          "n-method",
          "n-control",
          "n-reference",
          "n-spare"
        }) {
      form.text(key, model.field(key));
    }
    return form;
  }

  private void show(Optional<FilterPlan> plan) {
    counted.setText(plan.map(this::words).orElse(texts.get("plan.hint")));
    advice.setText(plan.map(FilterPlan::advice).map(texts::say).orElse(""));
    advice.setManaged(!advice.getText().isEmpty());
  }

  private String words(FilterPlan plan) {
    StringBuilder said =
        new StringBuilder(
            texts.get("plan.is", plan.total(), plan.samples(), plan.samplesPerSite()));
    said.append(texts.get("plan.part", plan.duplicates(), texts.get("said.duplicates")));
    said.append(part(plan, Role.FIELD_BLANK, "said.n-field"));
    said.append(part(plan, Role.TRIP_BLANK, "said.n-trip"));
    said.append(part(plan, Role.METHOD_BLANK, "said.n-method"));
    said.append(part(plan, Role.CONTROL, "said.n-control"));
    said.append(part(plan, Role.SPARE, "said.n-spare"));
    return said.toString();
  }

  private String part(FilterPlan plan, Role role, String key) {
    return texts.get("plan.part", plan.of(role), texts.get(key));
  }
}
