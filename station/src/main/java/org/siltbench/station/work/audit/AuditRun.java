package org.siltbench.station.work.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.work.weigh.Scale;
import org.siltbench.station.work.weigh.WeighEvent;

/** Weighs one bag after the other out of its bag. */
public final class AuditRun {

  /** The limit people start from, mg: common practice, from experience. */
  public static final String USUAL_LIMIT_MG = "0.5";

  private AuditRun() {}

  /** The greatest difference allowed, from what was typed. */
  public static Mass limit(String milligrams) {
    try {
      Mass mass = Mass.ofMilligrams(milligrams.strip().replace(',', '.'));
      if (mass.nanograms() > 0) {
        return mass;
      }
    } catch (NumberFormatException e) {
      throw new Problem.WrongUse(AuditSays.NO_LIMIT, Elsewhere.words(e));
    }
    throw new Problem.WrongUse(AuditSays.LIMIT_TOO_LOW);
  }

  /** Audits these, in order; an interrupt stops it between two. */
  public static List<BagAudit.Audited> of(
      Bench bench, Scale scale, List<String> ids, Mass limit, Consumer<WeighEvent> listener)
      throws InterruptedException {
    BagAudit audit = new BagAudit(bench, scale.pan(), scale.name(), limit, listener);
    List<BagAudit.Audited> all = new ArrayList<>();
    for (String id : ids) {
      all.add(audit.weigh(id));
    }
    return all;
  }
}
