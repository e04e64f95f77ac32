package org.siltbench.station.window;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.Executor;
import javafx.application.Platform;

/** The screen's thread; what comes before the toolkit runs waits for it. */
final class ScreenThread implements Executor {

  private final Queue<Runnable> early = new ArrayDeque<>();
  private boolean running;

  @Override
  public synchronized void execute(Runnable what) {
    if (running) {
      Platform.runLater(what);
    } else {
      early.add(what);
    }
  }

  /** The toolkit runs. */
  synchronized void begin() {
    running = true;
    early.forEach(Platform::runLater);
    early.clear();
  }
}
