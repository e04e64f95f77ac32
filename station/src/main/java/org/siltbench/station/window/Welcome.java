package org.siltbench.station.window;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.siltbench.station.window.desk.PracticeFolder;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Theme;
import org.siltbench.station.window.look.Zoom;

/** The first start: nothing is made before the person has said what for. */
final class Welcome {

  /** What a person wants of a folder without a lab. */
  enum Wish {
    PRACTICE,
    LAB,
    NOTHING
  }

  private final CompletableFuture<Wish> wish = new CompletableFuture<>();
  private final Stage stage;

  /** Asks on this stage; its closing is an answer too. */
  Welcome(Stage stage, Texts texts, Path folder, double width, double height) {
    this.stage = stage;
    Button practice = Controls.primary(texts, "welcome.practice", () -> answer(Wish.PRACTICE));
    Button lab = Controls.button(texts, "welcome.lab", () -> answer(Wish.LAB));
    VBox sheet =
        new VBox(
            Controls.text(texts, "welcome.title", "title"),
            said(texts, "welcome.why", folder),
            card(practice, said(texts, "welcome.practice.hint", PracticeFolder.beside(folder))),
            card(lab, Controls.text(texts, "welcome.lab.hint", "hint")),
            Controls.button(texts, "welcome.leave", () -> answer(Wish.NOTHING)));
    sheet.getStyleClass().addAll("sheet", "screen");
    Scene scene = new Scene(sheet, width, height);
    Theme.LIGHT.dress(scene);
    Zoom.follow(scene, 100);
    stage.setScene(scene);
    stage.setTitle(texts.get("welcome.title"));
    stage.setOnHidden(event -> wish.complete(Wish.NOTHING));
    stage.show();
    practice.requestFocus();
  }

  private static javafx.scene.control.Label said(Texts texts, String key, Path folder) {
    javafx.scene.control.Label label = Controls.label("hint");
    label.setText(texts.get(key, folder));
    return label;
  }

  private static VBox card(javafx.scene.Node... parts) {
    VBox card = new VBox(parts);
    card.getStyleClass().add("card");
    return card;
  }

  private void answer(Wish wanted) {
    wish.complete(wanted);
    stage.hide();
  }

  /** The answer, once it is there. */
  CompletableFuture<Wish> wish() {
    return wish;
  }
}
