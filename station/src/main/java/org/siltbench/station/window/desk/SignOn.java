package org.siltbench.station.window.desk;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.siltbench.station.Problem;
import org.siltbench.station.people.People;
import org.siltbench.station.people.Person;
import org.siltbench.station.people.Right;
import org.siltbench.station.people.SignedOn;

/**
 * Who is at the bench. An open lab asks for initials only; one that knows its people asks for the
 * PIN, and signs off by itself when nothing is done.
 */
public final class SignOn {

  private final People people;
  private final SignedOn signed;
  private final ReadOnlyStringWrapper initials = new ReadOnlyStringWrapper("");

  /** Nobody yet. */
  public SignOn(People people, SignedOn signed) {
    this.people = people;
    this.signed = signed;
  }

  /** The initials of who is at the bench; empty for nobody. Changes on the screen's thread. */
  public ReadOnlyStringProperty initials() {
    return initials.getReadOnlyProperty();
  }

  /** True if a PIN is asked for. */
  public boolean asksPin() {
    return !people.isOpen();
  }

  /**
   * Checks who wants in; slow on purpose where there is a PIN. The PIN is wiped.
   *
   * @throws Problem if they are not let in
   */
  public Person check(String given, char[] pin) {
    try {
      return people.isOpen()
          ? new Person(People.named(given), Right.SUPERVISE)
          : people.signOn(given, pin);
    } finally {
      Arrays.fill(pin, '\0');
    }
  }

  /** Who may work here, by initials; nobody in an open lab. */
  public List<Person> everybody() {
    return people.all();
  }

  /**
   * Registers a person, or gives a registered one another right, PIN or badge. The PIN is wiped.
   *
   * @throws Problem.Refused if whoever is here may not
   */
  public void register(String who, Right right, char[] pin, String badge) {
    try {
      requireSupervisor();
      people.put(who, right, pin, badge);
    } finally {
      Arrays.fill(pin, '\0');
    }
  }

  /** Takes a person off the list; what they recorded stays theirs. */
  public void remove(String who) {
    requireSupervisor();
    people.remove(who);
  }

  private void requireSupervisor() {
    if (!people.isOpen() && !door().right().includes(Right.SUPERVISE)) {
      throw new Problem.Refused(DeskSays.SUPERVISOR_ONLY);
    }
  }

  /**
   * For what writes into the lab's folder but not into its ledger; an open lab asks nobody.
   *
   * @throws Problem.Refused if whoever is here may only read, or nobody is
   */
  public void requireWeigher() {
    if (!people.isOpen() && !door().right().includes(Right.WEIGH)) {
      throw new Problem.Refused(DeskSays.WEIGHER_ONLY);
    }
  }

  /** Whose badge was scanned, if it is one. */
  public Optional<String> ofBadge(String scanned) {
    return people.isOpen() ? Optional.empty() : people.ofBadge(scanned);
  }

  /** Somebody was let in. */
  public void on(Person person) {
    signed.on(person);
    refresh();
  }

  /** Signs off. */
  public void off() {
    signed.off();
    refresh();
  }

  /** Something was done. */
  public void touch() {
    signed.touch();
  }

  /** Looks at the time: who did nothing for long is signed off. */
  public void refresh() {
    String now = signed.current().map(Person::initials).orElse("");
    if (!now.equals(initials.get())) {
      initials.set(now);
    }
  }

  /** True if whoever is at the bench may do what takes a supervisor; in an open lab anybody may. */
  public boolean supervises() {
    return people.isOpen()
        || signed.current().filter(p -> p.right().includes(Right.SUPERVISE)).isPresent();
  }

  /** Who writes the next entry; any thread. */
  public Person door() {
    return signed.current().orElseThrow(() -> new Problem.Refused(DeskSays.NOBODY_SIGNED_ON));
  }
}
