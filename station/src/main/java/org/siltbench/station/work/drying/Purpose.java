package org.siltbench.station.work.drying;

import java.util.List;
import org.siltbench.calc.method.Ignition;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.Span;
import org.siltbench.station.Problem;
import org.siltbench.station.life.Act;
import org.siltbench.station.life.FilterState;

/** Why filters are heated. */
public enum Purpose {
  PRE("pre", Act.PRE_DRY),
  POST("post", Act.DRY),
  IGNITION("ignition", Act.IGNITE);

  private final String code;
  private final Act act;

  Purpose(String code, Act act) {
    this.code = code;
    this.act = act;
  }

  /** The stable word. */
  public String code() {
    return code;
  }

  Act act() {
    return act;
  }

  /** Reads a stable word. */
  public static Purpose of(String word) {
    for (Purpose purpose : values()) {
      if (purpose.code.equals(word)) {
        return purpose;
      }
    }
    throw new Problem.WrongUse(DryingSays.NO_PURPOSE, word);
  }

  /** The temperatures the method allows. */
  Span range(Method method) {
    return this == IGNITION ? ignition(method).celsius() : method.drying().celsius();
  }

  /** How long this filter must stay in, minutes. */
  double minutes(Method method, FilterState filter) {
    if (this == IGNITION) {
      return ignition(method).minutes();
    }
    List<String> before =
        filter.stays().stream()
            .filter(stay -> stay.purpose().equals(code) && !stay.open())
            .map(stay -> stay.cycle())
            .toList();
    return before.isEmpty() ? method.drying().firstMinutes() : method.drying().laterMinutes();
  }

  private static Ignition ignition(Method method) {
    Ignition ignition = method.ignition();
    if (ignition == null) {
      throw new Problem.Refused(DryingSays.NO_IGNITION, method.key());
    }
    return ignition;
  }
}
