package org.siltbench.station.window.today;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.work.today.Due;

/** One row for each thing due; the first row's button has the focus. */
final class TodayView extends VBox {

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

  private static final int MOST = 40;

  private final TodayModel model;
  private final Texts texts;
  private final ZoneId zone;
  private final VBox rows = new VBox();

  TodayView(TodayModel model, Texts texts, ZoneId zone) {
    this.model = model;
    this.texts = texts;
    this.zone = zone;
    getStyleClass().add("screen");
    rows.getStyleClass().add("rows");
    ScrollPane scroll = Controls.scroll(rows);
    scroll.setFocusTraversable(false);
    getChildren().addAll(Controls.text(texts, "title", "title"), scroll);
    model.due().subscribe(this::show);
    show();
  }

  private void show() {
    List<Due> due = model.due();
    if (due.isEmpty()) {
      rows.getChildren().setAll(Controls.text(texts, "nothing", "hint"));
      return;
    }
    rows.getChildren().setAll(due.stream().limit(MOST).map(this::row).toList());
    if (due.size() > MOST) {
      Label more = Controls.label("hint");
      more.setText(texts.get("more", due.size() - MOST));
      rows.getChildren().add(more);
    }
  }

  private HBox row(Due one) {
    Label what = Controls.label("row-title");
    what.setText(texts.get("what." + one.what(), one.count(), one.batch()));
    Label when = Controls.label("hint");
    when.setText(when(one));
    VBox said = new VBox(what, when);
    HBox.setHgrow(said, Priority.ALWAYS);
    Button open = Controls.button(texts, "go." + one.what(), () -> model.open(one));
    open.setAccessibleText(open.getAccessibleText() + ": " + what.getText());
    HBox row = new HBox(shape(one.what()).node("row-shape"), said, open);
    row.getStyleClass().addAll("card", "row", tone(one.what()).style());
    return row;
  }

  private String when(Due one) {
    return switch (one.what()) {
      case POST_WEIGH -> one.until().map(t -> texts.get("until", at(t))).orElse("");
      case COOLING -> one.from().map(t -> texts.get("from", at(t))).orElse("");
      default -> texts.get("why." + one.what());
    };
  }

  private String at(OffsetDateTime time) {
    return time.atZoneSameInstant(zone).format(CLOCK);
  }

  private static Shape shape(Due.What what) {
    return switch (what) {
      case CHECK -> Shape.TRIANGLE;
      case POST_WEIGH, PRE_WEIGH -> Shape.DOWN;
      case COOLING, IN_OVEN -> Shape.CLOCK;
      case DRY, DRY_AGAIN -> Shape.DROP;
      case RESULTS -> Shape.TICK;
      default -> Shape.DOT;
    };
  }

  private static Tone tone(Due.What what) {
    return switch (what) {
      case CHECK, DRY_AGAIN -> Tone.WARN;
      case POST_WEIGH, PRE_WEIGH -> Tone.GOOD;
      case COOLING, IN_OVEN -> Tone.WAIT;
      default -> Tone.PLAIN;
    };
  }
}
