package org.siltbench.station.window.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyLongProperty;
import javafx.beans.property.ReadOnlyLongWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.people.GuardedLab;
import org.siltbench.station.people.Person;
import org.siltbench.station.work.equip.BalanceRecord;
import org.siltbench.station.work.live.LiveBalance;
import org.siltbench.station.work.method.MethodBook;

/**
 * What a screen's model works with. Everything here is used on the screen's thread, but for what
 * {@link #work()} and {@link #weighing()} run on theirs.
 */
public final class Desk {

  /** The parts that a desk is made of. */
  public record Parts(
      GuardedLab lab,
      SignOn signOn,
      Prefs prefs,
      Notices notices,
      Work work,
      Work printing,
      Work aside,
      Weighing weighing,
      Cues cues,
      Locale locale) {}

  private final Parts parts;
  private final ReadOnlyStringWrapper front = new ReadOnlyStringWrapper("");
  private final ReadOnlyLongWrapper changes = new ReadOnlyLongWrapper();
  private final ReadOnlyLongWrapper seconds = new ReadOnlyLongWrapper();
  private final ReadOnlyLongWrapper likes = new ReadOnlyLongWrapper();
  private Optional<LiveBalance> balance = Optional.empty();
  private Optional<Doors> doors = Optional.empty();

  /** A desk of these parts. */
  public Desk(Parts parts) {
    this.parts = parts;
  }

  /** The lab; whoever is signed on writes its entries. Ask and act only within {@link #work()}. */
  public OpenLab lab() {
    return parts.lab();
  }

  /** The same lab for one act of somebody who was let in for it alone, as a supervisor is. */
  public OpenLab labOf(Person other) {
    return parts.lab().as(other);
  }

  /** The clock of the bench. */
  public Clock clock() {
    return parts.lab().clock();
  }

  /** The methods, as files stand now. */
  public MethodBook methods() {
    return MethodBook.of(parts.lab().folder());
  }

  /** Who is at the bench. */
  public SignOn signOn() {
    return parts.signOn();
  }

  /** What this bench likes. */
  public Prefs prefs() {
    return parts.prefs();
  }

  /** What the person should know. */
  public Notices notices() {
    return parts.notices();
  }

  /** The way to bench work and back. */
  public Work work() {
    return parts.work();
  }

  /** The way to the printer and back: a slow one never keeps bench work waiting. */
  public Work printing() {
    return parts.printing();
  }

  /** The way to what takes long and touches no ledger: a search for a balance. */
  public Work aside() {
    return parts.aside();
  }

  /** The run that has the pan. */
  public Weighing weighing() {
    return parts.weighing();
  }

  /** Sound and light for hands-free work. */
  public Cues cues() {
    return parts.cues();
  }

  /** The language. */
  public Locale locale() {
    return parts.locale();
  }

  /** The words of a screen: the bundle {@code texts} beside this class. */
  public Texts texts(Class<?> screen) {
    return Texts.of(screen, parts.locale());
  }

  /** The balance this bench listens to; empty where none is set. */
  public Optional<LiveBalance> balance() {
    return balance;
  }

  /** The balance to weigh on; where there is none the person is told how to connect one. */
  public Optional<LiveBalance> balanceOrTell(String about) {
    if (balance.isEmpty()) {
      Texts texts = texts(Desk.class);
      notices().show(Notice.warning(about, texts.get("no.balance"), texts.get("no.balance.next")));
    }
    return balance;
  }

  /** Sets the balance, already started. */
  public void balance(LiveBalance live) {
    balance = Optional.of(live);
  }

  /** Who can do what only the whole window can. */
  public void doors(Doors window) {
    doors = Optional.of(window);
  }

  /** Listens to a balance from now on, and after the next start. */
  public void connect(String spec) {
    doors.ifPresent(window -> window.connect(spec));
    like(Prefs.Name.BALANCE, spec);
  }

  /** Opens a window over a practice lab beside this one; it takes a moment, so ask aside. */
  public void openPractice(Path labFolder) {
    doors.ifPresent(window -> window.openPractice(labFolder));
  }

  /**
   * Closes the window and opens it again over the same lab, as in another language.
   *
   * @throws Problem.Refused while a run has the pan
   */
  public void openAgain() {
    if (!weighing().running().get().isEmpty()) {
      throw new Problem.Refused(DeskSays.PAN_IN_USE);
    }
    doors.ifPresent(Doors::again);
  }

  /** Keeps what this bench likes; the window follows. */
  public void like(Prefs.Name name, String word) {
    work()
        .run(
            () -> {
              parts.prefs().put(name, word);
              return word;
            },
            kept -> likes.set(likes.get() + 1));
  }

  /** Grows whenever a like has changed. */
  public ReadOnlyLongProperty likes() {
    return likes.getReadOnlyProperty();
  }

  /** The name under which its weighings are recorded; ask within {@link #work()}. */
  public String balanceName() {
    return balance.map(b -> BalanceRecord.nameOf(lab().register(), b.spec())).orElse("");
  }

  /** The screen in front, by its id. */
  public ReadOnlyStringProperty front() {
    return front.getReadOnlyProperty();
  }

  /** Brings a screen in front. */
  public void go(String screen) {
    front.set(screen);
  }

  /** Grows whenever something was recorded: lists look again. */
  public ReadOnlyLongProperty changes() {
    return changes.getReadOnlyProperty();
  }

  /**
   * Looks again whenever something was recorded while a screen is in front. A screen behind it need
   * not: it looks when it comes.
   */
  public void changesInFront(String screen, Runnable look) {
    changes()
        .subscribe(
            () -> {
              if (front().get().equals(screen)) {
                look.run();
              }
            });
  }

  /** Something was recorded. */
  public void changed() {
    changes.set(changes.get() + 1);
    signOn().touch();
  }

  /** Grows once a second: what depends on the time looks again. */
  public ReadOnlyLongProperty seconds() {
    return seconds.getReadOnlyProperty();
  }

  /** A second has passed. */
  public void tick() {
    seconds.set(seconds.get() + 1);
    signOn().refresh();
  }

  /** Does an act that records; then lists look again. */
  public <T> void record(Supplier<T> act, Consumer<? super T> then) {
    work()
        .run(
            act,
            done -> {
              changed();
              then.accept(done);
            });
  }
}
