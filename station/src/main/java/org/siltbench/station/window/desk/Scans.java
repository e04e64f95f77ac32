package org.siltbench.station.window.desk;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.siltbench.station.Problem;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.work.scan.BagScan;

/**
 * Where every scan arrives, from whatever scanner, and finds its way: to the screen in front, to
 * the sign-on if it is a badge, else to a notice that says what it is and where it is wanted.
 */
public final class Scans {

  private static final String ABOUT = "scan";

  private final Desk desk;
  private final Texts texts;
  private final Supplier<Optional<ScanTaker>> front;
  private final Consumer<String> badge;

  /**
   * Scans at a desk.
   *
   * @param front who takes scans now
   * @param badge asks for the PIN of the person whose badge was scanned
   */
  public Scans(Desk desk, Supplier<Optional<ScanTaker>> front, Consumer<String> badge) {
    this.desk = desk;
    this.texts = desk.texts(Scans.class);
    this.front = front;
    this.badge = badge;
  }

  /** Something was scanned; on the screen's thread. */
  public void take(String entered) {
    desk.signOn().touch();
    desk.notices().clear(ABOUT);
    Optional<ScanTaker> taker = front.get();
    try {
      BagScan bag = BagScan.of(entered);
      if (!bag.hint().isEmpty()) {
        desk.notices().show(Notice.note(ABOUT, bag.hint().in(desk.locale())));
      }
      if (!taker.map(t -> t.scanned(bag)).orElse(false)) {
        explain(bag);
      }
    } catch (Problem.Refused e) {
      if (!taker.map(t -> t.scannedOther(entered.strip())).orElse(false)) {
        noBag(entered, e);
      }
    }
  }

  /** True while a balance types into the screen in front: its lines are no scans. */
  public boolean balanceTypes() {
    return front.get().map(ScanTaker::balanceTypes).orElse(false);
  }

  /** As short as the number of a dish: true if the screen in front asks for one. */
  public boolean takeDish(String entered) {
    boolean taken = front.get().map(t -> t.scannedOther(entered.strip())).orElse(false);
    if (taken) {
      desk.signOn().touch();
    }
    return taken;
  }

  private void noBag(String entered, Problem problem) {
    desk.work()
        .run(
            () -> desk.signOn().ofBadge(entered),
            who -> {
              if (who.isPresent()) {
                badge.accept(who.get());
              } else {
                refuse(problem);
              }
            });
  }

  private void refuse(Problem problem) {
    desk.notices().show(ABOUT, problem);
    desk.cues().give(Cues.Cue.REFUSED);
  }

  /** A bag is always good for something: says what it is and where it is wanted next. */
  private void explain(BagScan bag) {
    desk.work()
        .run(
            () -> Filters.require(desk.lab().register(), bag.filter().text()),
            state -> desk.notices().show(whatItIs(state)),
            this::refuse);
  }

  private Notice whatItIs(FilterState state) {
    String status = state.status().code();
    return new Notice(
        ABOUT,
        Notice.Level.NOTE,
        texts.get("scan.is", state.id(), texts.get("status." + status), state.batch()),
        "",
        texts.get("wanted." + status));
  }
}
