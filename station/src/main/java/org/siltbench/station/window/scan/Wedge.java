package org.siltbench.station.window.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import javafx.animation.PauseTransition;
import javafx.event.Event;
import javafx.event.EventTarget;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.util.Duration;

/**
 * A scanner that types, heard wherever the focus is. Keys are held back for a moment: what turns
 * out to be a scan goes to the scans and never into a field, what a person types goes where it was
 * typed, in its order.
 */
public final class Wedge {

  private static final Duration HOLD = Duration.millis(80);

  private record Held(EventTarget target, KeyEvent event) {}

  private final Burst burst = new Burst();
  private final List<Held> held = new ArrayList<>();
  private final PauseTransition release = new PauseTransition(HOLD);
  private final LongSupplier nanos;
  private final Consumer<String> scans;
  private boolean passing;
  private boolean swallowing;

  private Wedge(LongSupplier nanos, Consumer<String> scans) {
    this.nanos = nanos;
    this.scans = scans;
    release.setOnFinished(event -> pass());
  }

  /**
   * Listens to a scene's keys.
   *
   * @param nanos a monotonic clock
   * @param scans takes what was scanned
   */
  public static void listen(Scene scene, LongSupplier nanos, Consumer<String> scans) {
    Wedge wedge = new Wedge(nanos, scans);
    scene.addEventFilter(KeyEvent.ANY, wedge::key);
  }

  private void key(KeyEvent event) {
    if (passing) {
      return;
    }
    if (event.getEventType() == KeyEvent.KEY_PRESSED) {
      pressed(event);
    } else if (event.getEventType() == KeyEvent.KEY_TYPED) {
      typed(event);
    } else if (swallowing && isEnd(event.getCode())) {
      swallowing = false;
      event.consume();
    } else if (!held.isEmpty()) {
      hold(event);
    }
  }

  private void pressed(KeyEvent event) {
    swallowing = false;
    if (isEnd(event.getCode()) && burst.isScan(nanos.getAsLong())) {
      swallowing = true;
      event.consume();
      scanned();
    } else if (isPlain(event) && isPrintable(event.getText())) {
      letGoOfOld();
      hold(event);
    } else if (event.getCode() != KeyCode.SHIFT) {
      pass();
    }
  }

  private void typed(KeyEvent event) {
    if (swallowing) {
      event.consume();
    } else if (isPlain(event) && isPrintable(event.getCharacter())) {
      letGoOfOld();
      burst.add(event.getCharacter().charAt(0), nanos.getAsLong());
      hold(event);
    } else {
      pass();
    }
  }

  /** What stood before a pause was typed by a person. */
  private void letGoOfOld() {
    if (!burst.text().isEmpty() && !burst.goesOn(nanos.getAsLong())) {
      pass();
    }
  }

  private void hold(KeyEvent event) {
    held.add(new Held(event.getTarget(), event));
    event.consume();
    release.playFromStart();
  }

  private void scanned() {
    String text = burst.text();
    held.clear();
    burst.clear();
    release.stop();
    scans.accept(text);
  }

  private void pass() {
    release.stop();
    burst.clear();
    List<Held> now = new ArrayList<>(held);
    held.clear();
    passing = true;
    try {
      for (Held one : now) {
        Event.fireEvent(one.target(), one.event().copyFor(one.event().getSource(), one.target()));
      }
    } finally {
      passing = false;
    }
  }

  private static boolean isEnd(KeyCode code) {
    return code == KeyCode.ENTER || code == KeyCode.TAB;
  }

  private static boolean isPlain(KeyEvent event) {
    return !event.isControlDown() && !event.isAltDown() && !event.isMetaDown();
  }

  private static boolean isPrintable(String text) {
    return text.length() == 1 && !Character.isISOControl(text.charAt(0));
  }
}
