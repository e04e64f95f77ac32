package org.siltbench.station.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Who is signed on at a screen; signs off by itself when nothing was done for a while. */
public final class SignedOn {

  private final Clock clock;
  private final Duration idle;
  private @Nullable Person person;
  private Instant last = Instant.EPOCH;

  public SignedOn(Clock clock, Duration idle) {
    this.clock = clock;
    this.idle = idle;
  }

  /** Signs a person on. */
  public synchronized void on(Person who) {
    person = who;
    last = clock.instant();
  }

  /** Signs off. */
  public synchronized void off() {
    person = null;
  }

  /** Something was done: the time starts again. */
  public synchronized void touch() {
    if (current().isPresent()) {
      last = clock.instant();
    }
  }

  /** Who is signed on now. */
  public synchronized Optional<Person> current() {
    if (Duration.between(last, clock.instant()).abs().compareTo(idle) > 0) {
      person = null;
    }
    return Optional.ofNullable(person);
  }
}
