package org.siltbench.station.window.shell;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Prefs;
import org.siltbench.station.window.desk.ScanTaker;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.strip.StripModel;
import org.siltbench.station.window.strip.StripView;

/** The window's inside: the strip and the notices above, the rail beside, one screen in front. */
public final class Shell extends BorderPane {

  private static final KeyCombination WHO = new KeyCodeCombination(KeyCode.F1);

  private final Desk desk;
  private final Map<String, ScreenEntry> entries = new HashMap<>();
  private final Map<String, Screen> made = new HashMap<>();
  private final StackPane front = new StackPane();
  private final Region glow = new Region(); // a leaf: its look changes at each mass
  private final PauseTransition fading = new PauseTransition(Duration.seconds(2.5));
  private final SignOnPane signOn;

  /** A shell over a desk, for these screens; only the strip and the notices are there at first. */
  public Shell(Desk desk, StripModel strip, List<ScreenEntry> screens) {
    this.desk = desk;
    Texts texts = desk.texts(Shell.class);
    this.signOn = new SignOnPane(desk, texts);
    screens.forEach(entry -> entries.put(entry.id(), entry));
    getStyleClass().add("shell");
    setTop(
        new VBox(
            new StripView(strip, desk, signOn::toggle),
            new NoticeBar(desk.notices(), texts),
            signOn));
    glow.getStyleClass().add("glow");
    setCenter(new StackPane(glow, front));
    fading.setOnFinished(event -> desk.cues().rest());
    desk.cues().seen().subscribe(this::light);
  }

  /** Adds the rail and the screen in front: later than the strip, which is there first. */
  public void fill(List<ScreenEntry> screens) {
    setLeft(new Rail(screens, desk, desk.texts(Shell.class)));
    desk.front().subscribe(this::bring);
  }

  private void bring(String id) {
    ScreenEntry entry = entries.get(id);
    if (entry != null) {
      Screen screen = made.computeIfAbsent(id, i -> entry.make().apply(desk));
      front.getChildren().setAll(screen.view());
      screen.shown();
    }
  }

  private Optional<Screen> inFront() {
    return Optional.ofNullable(made.get(desk.front().get()));
  }

  /** Who takes scans now. */
  public Optional<ScanTaker> scans() {
    return inFront().flatMap(Screen::scans);
  }

  /** Asks for the PIN of somebody whose badge was scanned. */
  public void ask(String initials) {
    signOn.open(initials);
  }

  /** Takes the window's own keys from the scene, so that they work while nothing has the focus. */
  public void key(KeyEvent event) {
    boolean mine = event.getEventType() == KeyEvent.KEY_PRESSED && !event.isConsumed();
    if (mine && handled(event)) {
      event.consume();
    }
  }

  private boolean handled(KeyEvent event) {
    if (WHO.match(event)) {
      signOn.toggle();
      return true;
    }
    if (event.getCode() == KeyCode.ESCAPE && !desk.notices().list().isEmpty()) {
      desk.notices().dismiss();
      return true;
    }
    if (event.getCode().getName().equalsIgnoreCase(desk.prefs().get(Prefs.Name.KEY))) {
      return inFront().map(Screen::oneKey).orElse(false);
    }
    return entries.values().stream()
        .filter(entry -> entry.key().match(event))
        .findFirst()
        .map(
            entry -> {
              desk.go(entry.id());
              return true;
            })
        .orElse(false);
  }

  private void light(Cues.Cue cue) {
    glow.getStyleClass().removeIf(style -> style.startsWith("cue-"));
    if (cue != Cues.Cue.NONE) {
      glow.getStyleClass().add("cue-" + cue.name().toLowerCase(Locale.ROOT));
      fading.playFromStart();
    }
  }

  /** The view of the screen in front. */
  public Node frontView() {
    return front.getChildren().get(0);
  }
}
