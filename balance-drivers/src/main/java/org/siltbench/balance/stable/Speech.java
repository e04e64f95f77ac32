package org.siltbench.balance.stable;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Turns verdicts into events, each said once. */
final class Speech {

  private @Nullable Verdict said;

  /** Forgets what was said: a new load. */
  void restart() {
    said = null;
  }

  /** Withdraws a provisional value that was shown. */
  void withdraw(String why, List<PanEvent> out) {
    if (said instanceof Verdict.Provisional) {
      out.add(new PanEvent.Withdrawn(why));
    }
    said = null;
  }

  /** Says what is new in a verdict. */
  void say(Verdict verdict, List<PanEvent> out) {
    if (said != null && said.getClass() == verdict.getClass() && !moved(verdict)) {
      return;
    }
    if (verdict instanceof Verdict.Provisional p) {
      withdraw("the value has moved", out);
      out.add(new PanEvent.Provisional(p.mass(), p.digits()));
    } else {
      withdraw(why(verdict), out);
    }
    if (verdict instanceof Verdict.TakingUp up) {
      out.add(new PanEvent.TakingUpMoisture(up.mgPerMin()));
    }
    said = verdict;
  }

  private boolean moved(Verdict verdict) {
    return verdict instanceof Verdict.Provisional && !verdict.equals(said);
  }

  private static String why(Verdict verdict) {
    if (verdict instanceof Verdict.Disturbed d) {
      return d.why();
    } else if (verdict instanceof Verdict.TakingUp) {
      return "the filter gains mass: it takes up moisture or is still warm";
    } else if (verdict instanceof Verdict.Drifting) {
      return "the value drifts: a warm filter, static, or a balance not at rest";
    }
    return "the value has not come to rest";
  }
}
