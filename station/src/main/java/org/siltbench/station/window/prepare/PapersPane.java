package org.siltbench.station.window.prepare;

import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Sheet;

/** Labels and field sheet. */
final class PapersPane extends VBox {

  PapersPane(PapersModel model, Texts texts) {
    getStyleClass().addAll("card", "form");
    Sheet labels =
        new Sheet(texts, 4, model::labelFile)
            .choice("stock", model.stocks(), name -> name, model.media)
            .choice("code", model.codes, word -> texts.get("code." + word), model.code)
            .text("dpi", model.dpi)
            .text("start", model.startAt)
            .check("only.new", model.onlyNew)
            .check("slip", model.slip)
            .choice("queue", model.queues(), name -> name, model.queue);
    Sheet sheet =
        new Sheet(texts, 4, model::sheetFile)
            .choice("sheet.queue", model.queues(), name -> name, model.sheetQueue);
    getChildren()
        .setAll(
            Controls.text(texts, "labels", "subtitle"),
            Controls.text(texts, "labels.hint", "hint"),
            labels,
            Controls.acts(
                Controls.primary(texts, "labels.pdf", model::labelFile),
                Controls.button(texts, "labels.print", model::labelPrint)),
            Controls.text(texts, "sheet", "subtitle"),
            Controls.text(texts, "sheet.hint", "hint"),
            sheet,
            Controls.acts(
                Controls.primary(texts, "sheet.pdf", model::sheetFile),
                Controls.button(texts, "sheet.print", model::sheetPrint)));
  }
}
