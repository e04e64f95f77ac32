package org.siltbench.station.window.results;

import java.util.List;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.labels.chart.ChartLayout;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.ChartView;
import org.siltbench.station.window.look.Choices;
import org.siltbench.station.window.look.Chooser;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.FileField;
import org.siltbench.station.work.load.LoadSheet;
import org.siltbench.station.work.load.LoadUnit;

/** The load: a table of discharge is asked for, then what passed each site is told and drawn. */
final class LoadPane extends VBox {

  private final LoadModel model;
  private final ResultsModel results;
  private final Texts texts;
  private final TextField discharge = new FileField();
  private final TextField from = new TextField();
  private final TextField to = new TextField();
  private final TextField flowStep = new TextField("1h");
  private final TextField sampleStep = new TextField("6h");
  private final ComboBox<LoadUnit> unit;
  private final VBox answer = new VBox();

  LoadPane(LoadModel model, ResultsModel results, Texts texts) {
    this.model = model;
    this.results = results;
    this.texts = texts;
    unit =
        Choices.of(
            FXCollections.observableArrayList(LoadUnit.values()),
            one -> texts.get("unit." + one.word()));
    unit.setValue(LoadUnit.METRIC);
    getStyleClass().add("sheet");
    answer.getStyleClass().add("sheet");
    ScrollPane scroll = Controls.scroll(answer);
    getChildren().addAll(question(), scroll);
    model
        .answer()
        .subscribe(now -> answer.getChildren().setAll(now.map(this::nodes).orElseGet(this::hint)));
  }

  private Node question() {
    discharge.setPromptText(texts.get("discharge.prompt"));
    from.setPromptText(texts.get("load.common"));
    to.setPromptText(texts.get("load.common"));
    flowStep.setPrefColumnCount(4);
    sampleStep.setPrefColumnCount(4);
    from.setPrefColumnCount(10);
    to.setPrefColumnCount(10);
    HBox file = Chooser.beside(texts, "discharge", discharge, Chooser.Kind.FILE);
    discharge.setOnAction(event -> model.calculate(asked()));
    HBox fields =
        new HBox(
            file,
            Controls.field(texts, "load.from", from),
            Controls.field(texts, "load.to", to),
            Controls.field(texts, "flow.step", flowStep),
            Controls.field(texts, "sample.step", sampleStep),
            Controls.captioned(texts, "unit", unit));
    fields.getStyleClass().add("line");
    HBox acts =
        new HBox(
            Controls.primary(texts, "load.go", () -> model.calculate(asked())),
            Controls.button(texts, "load.write", this::write));
    acts.getStyleClass().add("level");
    VBox card = new VBox(fields, acts);
    card.getStyleClass().add("card");
    return card;
  }

  private void write() {
    model.write(asked(), results.usualFolder());
  }

  private LoadModel.Asked asked() {
    return new LoadModel.Asked(
        discharge.getText(),
        from.getText(),
        to.getText(),
        flowStep.getText(),
        sampleStep.getText(),
        unit.getValue());
  }

  private List<Node> hint() {
    return List.of(Controls.text(texts, "load.hint", "hint"));
  }

  private List<Node> nodes(LoadModel.Answer now) {
    List<Node> out = new java.util.ArrayList<>();
    now.sheets().forEach(sheet -> out.add(site(sheet)));
    now.notes().forEach(note -> out.add(said(texts.say(note), "hint")));
    return out;
  }

  private Node site(LoadSheet sheet) {
    VBox words = new VBox(said(name(sheet), "subtitle"), said(kilograms(sheet), "load-figure"));
    words
        .getChildren()
        .add(said(texts.get("load.more", sheet.large(), sheet.water(), sheet.mean()), "row-small"));
    words
        .getChildren()
        .add(
            said(
                texts.get("load.span", sheet.from(), sheet.to(), sheet.covered(), sheet.gaps()),
                "hint"));
    sheet.curve().forEach(one -> words.getChildren().add(curve(one)));
    sheet.notes().forEach(note -> words.getChildren().add(said(texts.say(note), "hint")));
    words.getStyleClass().add("small-rows");
    HBox.setHgrow(words, Priority.ALWAYS);
    ChartView loop = new ChartView();
    loop.getStyleClass().add("results-loop");
    loop.show(
        (w, h) -> ChartLayout.of(sheet.loop(), w, h, texts::tell),
        texts.tell(sheet.loop().title()));
    HBox row = new HBox(words, loop);
    row.getStyleClass().add("card");
    return row;
  }

  private String kilograms(LoadSheet sheet) {
    return sheet.u().isEmpty()
        ? texts.get("load.bare", sheet.kilograms())
        : texts.get("load.kg", sheet.kilograms(), sheet.u());
  }

  private Label curve(LoadSheet.Curve one) {
    return said(
        texts.get("load.curve", texts.get("correction." + one.correction()), one.kilograms()),
        "label");
  }

  private String name(LoadSheet sheet) {
    return sheet.site().isEmpty() ? texts.get("load.nosite") : sheet.site();
  }

  private static Label said(String text, String style) {
    Label label = Controls.label(style);
    label.setText(text);
    return label;
  }
}
