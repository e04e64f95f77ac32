package org.siltbench.balance.practice;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.VirtualTime;

/**
 * How a practice balance inside this process is set up.
 *
 * @param seed where all chance comes from
 * @param room the balance and its surroundings
 * @param via whether bytes stay in memory or cross a real pseudo-terminal
 * @param virtualTime the clock to share, or null to begin one now
 */
public record PracticeSetup(long seed, Room room, Via via, @Nullable VirtualTime virtualTime) {

  /** The way the bytes take. */
  public enum Via {
    /** No device is touched. */
    MEMORY,
    /** A real pseudo-terminal, read by the serial link. */
    PTY
  }

  /** A calm room, in memory, on a clock of its own. */
  public static PracticeSetup seeded(long seed) {
    return new PracticeSetup(seed, Room.CALM, Via.MEMORY, null);
  }

  /** The same in another room. */
  public PracticeSetup in(Room other) {
    return new PracticeSetup(seed, other, via, virtualTime);
  }

  /** The same by another way. */
  public PracticeSetup via(Via other) {
    return new PracticeSetup(seed, room, other, virtualTime);
  }

  /** The same on a clock shared with others. */
  public PracticeSetup on(VirtualTime shared) {
    return new PracticeSetup(seed, room, via, shared);
  }

  /** The clock to share, if there is one. */
  public Optional<VirtualTime> sharedTime() {
    return Optional.ofNullable(virtualTime);
  }
}
