package org.siltbench.calc.result;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.flag.Flag;

/** The flags of one row while they are being raised; most rows raise none and cost no set. */
final class Raised {

  private @Nullable EnumSet<Flag> flags;

  void add(Flag flag, boolean holds) {
    if (holds) {
      add(flag);
    }
  }

  void add(Flag flag) {
    if (flags == null) {
      flags = EnumSet.noneOf(Flag.class);
    }
    flags.add(flag);
  }

  boolean has(Flag flag) {
    return flags != null && flags.contains(flag);
  }

  /** In the order of the list. */
  Set<Flag> all() {
    return flags == null ? Set.of() : flags;
  }
}
