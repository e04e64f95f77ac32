package org.siltbench.balance.practice;

import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.VirtualTime;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.link.Pacer;
import org.siltbench.balance.link.SpecOptions;

/** Sets practice balances up. */
public final class Practice {

  private Practice() {}

  /**
   * A practice balance as a link.
   *
   * @param wall the clock that paces it if a speed is given
   * @param speed simulated seconds in one second, or null to run in step
   */
  public static PracticeLink link(
      PracticeSetup setup, LineFormat format, Timebase wall, @Nullable Double speed) {
    VirtualTime time = setup.sharedTime().orElseGet(() -> new VirtualTime(wall.instant()));
    PracticeBalance balance = new PracticeBalance(setup.seed(), setup.room(), format, time);
    Pacer pacer = speed == null ? Pacer.UNPACED : Pacer.of(wall, time, speed);
    LinkSpec spec =
        new LinkSpec.Practice(
            setup.seed(), new SpecOptions(null, null, null, SpecOptions.EVERY, speed));
    return new PracticeLink(spec.toString(), balance, time, pacer, setup.via());
  }
}
