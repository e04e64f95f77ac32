package org.siltbench.station.window;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javafx.animation.PauseTransition;
import javafx.stage.Stage;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;

/**
 * The window comes up in two steps: the strip alone, with the balance that is heard already; then,
 * once that has been drawn, the lab is opened and rail and screen are added.
 */
final class Opening {

  static final double WIDTH = 1366;
  static final double HEIGHT = 768;
  private static final int FRAMES_OF_THE_STRIP_ALONE = 10;

  private static final String ABOUT = "opening";

  private final Opened opened;
  private final PauseTransition late = new PauseTransition(Duration.seconds(2));
  private final CountDownLatch closed = new CountDownLatch(1);
  private volatile @Nullable RuntimeException failure;
  private volatile boolean again;

  Opening(Opened opened) {
    this.opened = opened;
    late.setOnFinished(event -> tellThatItTakes());
  }

  /** Shows it; on the screen's thread. */
  void show() {
    Stage stage = new Stage();
    stage.setOnHidden(event -> closed.countDown());
    opened
        .assembly()
        .again(
            () -> {
              again = true;
              stage.hide();
            });
    BenchStage window = BenchStage.strip(stage, opened.assembly(), System::nanoTime, WIDTH, HEIGHT);
    Optional<FirstMass> measured = measured(window, stage);
    Frames.after(
        FRAMES_OF_THE_STRIP_ALONE,
        () -> {
          if (stage.isShowing()) { // it may have been closed before the lab was asked for
            late.play();
            opened.openLab(() -> fill(window, measured), problem -> fail(stage, problem));
          }
        });
  }

  private static Optional<FirstMass> measured(BenchStage window, Stage stage) {
    String once = System.getProperty("siltbench.window.once", "");
    return once.isEmpty()
        ? Optional.empty()
        : Optional.of(FirstMass.await(window.scene(), Path.of(once), stage::hide));
  }

  /** A register that is made anew from a long ledger takes its time. */
  private void tellThatItTakes() {
    Desk desk = opened.assembly().desk();
    desk.notices().show(Notice.note(ABOUT, desk.texts(Opening.class).get("lab.opening")));
  }

  private void fill(BenchStage window, Optional<FirstMass> measured) {
    late.stop();
    opened.assembly().desk().notices().clear(ABOUT);
    boolean balance = opened.assembly().desk().balance().isPresent();
    window.fill(balance ? "today" : "connect");
    window.askWho();
    measured.ifPresent(FirstMass::filled);
  }

  private void fail(Stage stage, RuntimeException problem) {
    failure = problem;
    stage.hide();
  }

  /**
   * Waits until the window is closed.
   *
   * @return true if it is to be opened again
   * @throws org.siltbench.station.Problem if the lab could not be opened
   */
  boolean awaitEnd() throws InterruptedException {
    closed.await();
    RuntimeException why = failure;
    if (why != null) {
      throw why;
    }
    return again;
  }
}
