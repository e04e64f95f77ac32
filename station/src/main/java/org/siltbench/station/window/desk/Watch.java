package org.siltbench.station.window.desk;

import java.time.Duration;
import java.time.Instant;

/**
 * Looks once a second after what no act reports by itself: a clock that goes back, a lab folder
 * that another program keeps busy.
 */
public final class Watch {

  private static final Duration CLOCK_SLACK = Duration.ofSeconds(2);
  private static final long PATIENCE_S = 3;
  private static final long BETWEEN_PROBES_S = 5;

  private final Desk desk;
  private final Texts texts;
  private Instant latest;
  private long asked = -1;

  private Watch(Desk desk) {
    this.desk = desk;
    this.texts = desk.texts(Watch.class);
    this.latest = desk.clock().instant();
  }

  /** Watches over a desk from now on. */
  public static void over(Desk desk) {
    Watch watch = new Watch(desk);
    desk.seconds().subscribe(second -> watch.look(second.longValue()));
  }

  private void look(long second) {
    clock();
    busy(second);
  }

  private void clock() {
    Instant now = desk.clock().instant();
    if (now.isBefore(latest.minus(CLOCK_SLACK))) {
      long back = Duration.between(now, latest).toSeconds();
      desk.notices()
          .show(
              new Notice(
                  "clock",
                  Notice.Level.TROUBLE,
                  texts.get("clock.back", back),
                  texts.get("clock.safe"),
                  texts.get("clock.next")));
      latest = now;
    } else if (now.isAfter(latest)) {
      latest = now;
    }
  }

  /** A question to the lab is answered at once, unless something holds it. */
  private void busy(long second) {
    if (asked < 0) {
      if (second % BETWEEN_PROBES_S == 0) {
        asked = second;
        desk.work().run(desk.lab()::practice, answered -> free(), problem -> free());
      }
    } else if (second - asked == PATIENCE_S) {
      desk.notices()
          .show(
              new Notice(
                  "busy",
                  Notice.Level.TROUBLE,
                  texts.get("busy"),
                  texts.get("busy.safe"),
                  texts.get("busy.next")));
    }
  }

  private void free() {
    asked = -1;
    desk.notices().clear("busy");
  }
}
