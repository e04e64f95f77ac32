package org.siltbench.station.bench;

import java.time.Clock;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import org.siltbench.station.ledger.Disk;
import org.siltbench.station.ledger.RealDisk;
import org.siltbench.station.register.Subjects;
import org.siltbench.station.said.Words;

/**
 * What a bench takes from outside.
 *
 * @param operator the initials written into entries
 * @param clock wall clock with zone
 * @param random for the bench's code and key: a secure one, but in tests
 * @param subjects how the register understands entries
 * @param notes takes sentences for the person, such as that a torn line was set aside
 * @param disk the disk
 */
public record Setting(
    String operator,
    Clock clock,
    RandomGenerator random,
    Subjects subjects,
    Consumer<Words> notes,
    Disk disk) {

  /** On the disk of this computer. */
  public Setting(
      String operator,
      Clock clock,
      RandomGenerator random,
      Subjects subjects,
      Consumer<Words> notes) {
    this(operator, clock, random, subjects, notes, new RealDisk());
  }

  /** Refuses an operator that cannot stand in a table. */
  public Setting {
    requireOperator(operator);
  }

  static void requireOperator(String operator) {
    if (operator.isBlank() || operator.length() > 40 || operator.chars().anyMatch(c -> c < ' ')) {
      throw new IllegalArgumentException("operator: 1 to 40 characters, not \"" + operator + '"');
    }
  }
}
