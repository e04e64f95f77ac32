package org.siltbench.station.window.shell;

import java.util.Comparator;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Notices;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;

/** The most pressing notices, under the strip: what happened, what is safe, what to do next. */
final class NoticeBar extends VBox {

  private static final int MOST = 2;

  private final Notices notices;
  private final Texts texts;

  NoticeBar(Notices notices, Texts texts) {
    this.notices = notices;
    this.texts = texts;
    getStyleClass().add("notices");
    notices.list().addListener((ListChangeListener<Notice>) change -> show());
    show();
  }

  private void show() {
    getChildren()
        .setAll(
            notices.list().stream()
                .sorted(Comparator.comparing(Notice::level).reversed())
                .limit(MOST)
                .map(this::row)
                .toList());
    Controls.shown(this, !getChildren().isEmpty());
  }

  private HBox row(Notice notice) {
    Label what = Controls.label("notice-what");
    what.setText(texts.get("notice." + notice.level()) + ": " + notice.what());
    VBox said = new VBox(what);
    String rest = (notice.safe() + " " + notice.next()).strip();
    if (!rest.isEmpty()) {
      Label more = Controls.label("notice-next");
      more.setText(rest);
      said.getChildren().add(more);
    }
    HBox.setHgrow(said, Priority.ALWAYS);
    Button read =
        Controls.whole(Controls.button(texts, "notice.read", () -> notices.dismiss(notice)));
    read.getStyleClass().add("flat");
    HBox row = new HBox(shape(notice.level()).node("row-shape"), said, read);
    row.getStyleClass().addAll("notice", tone(notice.level()).style());
    row.setAccessibleText(what.getText() + " " + rest);
    return row;
  }

  private static Shape shape(Notice.Level level) {
    return switch (level) {
      case NOTE -> Shape.DOT;
      case WARNING -> Shape.TRIANGLE;
      case REFUSED -> Shape.CROSS;
      case TROUBLE -> Shape.BREAK;
    };
  }

  private static Tone tone(Notice.Level level) {
    return switch (level) {
      case NOTE -> Tone.WAIT;
      case WARNING -> Tone.WARN;
      case REFUSED, TROUBLE -> Tone.BAD;
    };
  }
}
