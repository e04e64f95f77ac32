package org.siltbench.station.window.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import javafx.animation.PauseTransition;
import javafx.event.Event;
import javafx.event.EventDispatcher;
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
  private final Predicate<String> dishes;
  private final BooleanSupplier away;
  private boolean passing;
  private boolean swallowing;
  private boolean known;
  private long moment;

  private Wedge(
      LongSupplier nanos, Consumer<String> scans, Predicate<String> dishes, BooleanSupplier away) {
    this.dishes = dishes;
    this.away = away;
    this.nanos = nanos;
    this.scans = scans;
    release.setOnFinished(event -> pass());
  }

  /**
   * Listens to a scene's keys.
   *
   * @param nanos a monotonic clock
   * @param scans takes what was scanned
   * @param dishes takes what is as short as the number of a dish, if it is asked for one; what it
   *     leaves goes where it was typed
   * @param away true while quick keys are no scanner's: every key goes where it was typed, at once
   */
  public static void listen(
      Scene scene,
      LongSupplier nanos,
      Consumer<String> scans,
      Predicate<String> dishes,
      BooleanSupplier away) {
    Wedge wedge = new Wedge(nanos, scans, dishes, away);
    scene.addEventFilter(KeyEvent.ANY, wedge::key);
    EventDispatcher usual = scene.getEventDispatcher();
    scene.setEventDispatcher(
        (event, tail) -> {
          wedge.beforeAlt(event);
          return usual.dispatchEvent(event, tail);
        });
  }

  /** Once the toolkit has seen Alt, it would take a letter held back for one of its own. */
  private void beforeAlt(Event event) {
    boolean alt = event instanceof KeyEvent key && key.getCode() == KeyCode.ALT;
    if (alt && event.getEventType() == KeyEvent.KEY_PRESSED) {
      pass();
    }
  }

  private void key(KeyEvent event) {
    if (passing) {
      return;
    }
    if (away.getAsBoolean()) {
      pass();
      return;
    }
    known = false;
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

  /** The moment of the key in hand, asked once. */
  private long now() {
    if (!known) {
      moment = nanos.getAsLong();
      known = true;
    }
    return moment;
  }

  private void pressed(KeyEvent event) {
    swallowing = false;
    if (isEnd(event.getCode()) && burst.isScan(now())) {
      swallowing = true;
      event.consume();
      scanned();
    } else if (isEnd(event.getCode()) && isDish()) {
      swallowing = true;
      event.consume();
      forget();
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
      burst.add(event.getCharacter().charAt(0), now());
      hold(event);
    } else {
      pass();
    }
  }

  /** What stood before a pause was typed by a person. */
  private void letGoOfOld() {
    if (!burst.text().isEmpty() && !burst.goesOn(now())) {
      pass();
    }
  }

  private void hold(KeyEvent event) {
    held.add(new Held(event.getTarget(), event));
    event.consume();
    release.playFromStart();
  }

  private boolean isDish() {
    return burst.isShortScan(now()) && dishes.test(burst.text());
  }

  private void scanned() {
    String text = burst.text();
    forget();
    scans.accept(text);
  }

  private void forget() {
    held.clear();
    burst.clear();
    release.stop();
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
