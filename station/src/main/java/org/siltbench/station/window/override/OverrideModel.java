package org.siltbench.station.window.override;

import java.time.LocalDate;
import java.util.Arrays;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.siltbench.station.Problem;
import org.siltbench.station.people.Person;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.check.CheckOverride;
import org.siltbench.station.work.check.CheckState;

/** Whether a check stands in the way of this balance, and a supervisor's word against it. */
public final class OverrideModel {

  static final String ID = "override";

  /** What there is to do about it. */
  enum Way {
    /** Nothing stands in the way, or nobody asked. */
    NONE,
    /** A supervisor may say to weigh on. */
    OPEN,
    /** One has said so, and it holds. */
    SAID
  }

  /**
   * What is shown.
   *
   * @param way what there is to do
   * @param words what is wrong, or who said why to weigh on
   */
  record Offer(Way way, String words) {
    static final Offer NONE = new Offer(Way.NONE, "");
  }

  private final Desk desk;
  private final Texts texts;
  private final ReadOnlyObjectWrapper<Offer> offer = new ReadOnlyObjectWrapper<>(Offer.NONE);

  /** Nothing is offered yet. */
  public OverrideModel(Desk desk) {
    this.desk = desk;
    this.texts = desk.texts(OverrideModel.class);
  }

  ReadOnlyObjectProperty<Offer> offer() {
    return offer.getReadOnlyProperty();
  }

  /** Offers the way out, if the check of the balance is failed or missing. */
  public void look() {
    desk.work().run(this::looked, offer::set);
  }

  /** Offers nothing for now. */
  public void withdraw() {
    offer.set(Offer.NONE);
  }

  private Offer looked() {
    String balance = desk.balanceName();
    CheckState state =
        CheckState.of(
            desk.lab().register(), balance, LocalDate.now(desk.clock()), desk.clock().getZone());
    if (balance.isEmpty() || state.clear()) {
      return Offer.NONE;
    }
    return state.covered()
        ? new Offer(Way.SAID, texts.say(state.inSpite()))
        : new Offer(Way.OPEN, texts.say(state.fault()));
  }

  /** True if a supervisor has to be let in for it: whoever is at the bench is none. */
  boolean asksWho() {
    return !desk.signOn().supervises();
  }

  /**
   * A supervisor says to weigh on, and why. The PIN is wiped.
   *
   * @param initials whose word it is; not read where whoever is at the bench may say so
   */
  void weighOn(String reason, String initials, char[] pin) {
    boolean asks = asksWho();
    desk.work()
        .run(
            () -> {
              try {
                CheckOverride said = new CheckOverride(desk.balanceName(), reason);
                Person by = asks ? desk.signOn().check(initials, pin) : desk.signOn().door();
                return said.record(desk.labOf(by));
              } finally {
                Arrays.fill(pin, '\0');
              }
            },
            entry -> {
              desk.notices().clear(ID);
              desk.notices().show(Notice.note(ID, texts.get("said", entry.by(), entry.ref())));
              desk.changed();
              look();
            },
            this::refused);
  }

  private void refused(Problem problem) {
    desk.notices().show(ID, problem);
    desk.cues().give(Cues.Cue.ATTENTION);
  }
}
