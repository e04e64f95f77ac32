package org.siltbench.station.window.desk;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.siltbench.station.work.Progress;

/** Work that may take long: how far it is, shown once it takes more than a second, and its stop. */
public final class Doing implements Progress {

  private final Desk desk;
  private final ReadOnlyStringWrapper what = new ReadOnlyStringWrapper("");
  private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper();
  private final ReadOnlyBooleanWrapper shown = new ReadOnlyBooleanWrapper();
  private boolean running;
  private long begun;
  private volatile boolean stopped;

  /** Nothing is being done yet. */
  public Doing(Desk desk) {
    this.desk = desk;
    desk.seconds().subscribe(second -> look(second.longValue()));
  }

  /** It begins; on the screen's thread, as everything here but {@link #goesOn}. */
  public void begin() {
    stopped = false;
    running = true;
    begun = desk.seconds().get();
    share.set(0);
    what.set("");
  }

  /** It is over, one way or another. */
  public void end() {
    running = false;
    shown.set(false);
  }

  private void look(long second) {
    shown.set(running && second - begun > 1);
  }

  /** Stops it before its next step. */
  public void stop() {
    stopped = true;
  }

  /** The step it is at: a word of the work's. */
  public ReadOnlyStringProperty what() {
    return what.getReadOnlyProperty();
  }

  /** What share of it is done, from 0 to 1. */
  public ReadOnlyDoubleProperty share() {
    return share.getReadOnlyProperty();
  }

  /** True while it is worth a look. */
  public ReadOnlyBooleanProperty shown() {
    return shown.getReadOnlyProperty();
  }

  @Override
  public boolean goesOn(String step, int done, int of) {
    desk.work()
        .onScreen(
            () -> {
              what.set(step);
              share.set((double) done / of);
            });
    return !stopped;
  }
}
