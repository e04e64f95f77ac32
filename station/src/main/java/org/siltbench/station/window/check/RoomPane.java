package org.siltbench.station.window.check;

import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Form;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.Moments;
import org.siltbench.station.work.equip.RoomLog;

/** The air of the room: what is read off the wall now, and what was noted before. */
final class RoomPane extends VBox {

  RoomPane(EquipModel model, Texts texts, Moments moments) {
    Form form =
        new Form(texts)
            .field("temperature", 8)
            .field("pressure", 8)
            .field("humidity", 8)
            .field("noted", 12);
    VBox card =
        new VBox(form, Controls.primary(texts, "save.room", () -> model.noteRoom(form::get)));
    card.getStyleClass().add("card");
    Grid<RoomLog.Note> table =
        new Grid<>(texts, "room", "room.none", model.room())
            .column("at", 24, note -> moments.at(note.at()))
            .column("temperature", 19, RoomLog.Note::temperature)
            .column("pressure", 19, RoomLog.Note::pressure)
            .column("humidity", 19, RoomLog.Note::humidity)
            .column("by", 19, RoomLog.Note::by);
    VBox.setVgrow(table, Priority.ALWAYS);
    getStyleClass().add("sheet");
    getChildren().addAll(card, table);
  }
}
