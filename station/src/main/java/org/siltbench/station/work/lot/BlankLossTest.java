package org.siltbench.station.work.lot;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.LotLoss;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.life.LotState;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.weigh.Grams;

/**
 * The lot's blank-loss test: clean filters go through filtration of clean water, drying and
 * weighing; what they lose counts against the lot.
 *
 * @param lot the lot
 * @param lossesMg mass lost by each filter, mg; a gain is negative
 * @param areaCm2 area of a filter, cm²; null takes it from the lot's diameter
 * @param limitMgCm2 most each filter may lose, mg/cm²
 */
public record BlankLossTest(
    String lot, List<BigDecimal> lossesMg, @Nullable BigDecimal areaCm2, BigDecimal limitMgCm2) {

  /** ISO 11923 asks for less than this, mg/cm² (from memory). */
  public static final BigDecimal ISO_LIMIT = new BigDecimal("0.017");

  /** Refuses a test of nothing. */
  public BlankLossTest {
    lossesMg = List.copyOf(lossesMg);
    if (lossesMg.isEmpty()) {
      throw new Problem.WrongUse(LotSays.NO_FILTERS);
    }
    if (limitMgCm2.signum() <= 0) {
      throw new Problem.WrongUse(LotSays.NO_LIMIT, limitMgCm2.toPlainString());
    }
  }

  /** The verdict, and the entry behind it. */
  public record Verdict(boolean pass, double worstMgCm2, Entry entry) {}

  /** Judges and records the test: each filter must lose less than the limit. */
  public Verdict record(Bench bench) {
    LotLoss[] loss = new LotLoss[1];
    List<Entry> written =
        bench.act(
            register -> {
              LotState state =
                  LotState.fold(lot, register.history(About.lot(lot))).orElseThrow(this::unknown);
              double area = area(state);
              loss[0] = LotLoss.of(losses(), area);
              return List.of(facts(area, passes(loss[0])).draft("lot.tested"));
            });
    return new Verdict(passes(loss[0]), loss[0].worstMgPerCm2(), written.get(0));
  }

  private List<Mass> losses() {
    return lossesMg.stream().map(mg -> Mass.ofMilligrams(mg.doubleValue())).toList();
  }

  private boolean passes(LotLoss loss) {
    return loss.passes(limitMgCm2.doubleValue());
  }

  private Facts facts(double area, boolean pass) {
    return new Facts()
        .put("lot", lot)
        .put("area_cm2", Grams.decimal(area))
        .put("losses_mg", lossesMg.stream().map(BigDecimal::toPlainString).toList())
        .put("limit_mg_cm2", limitMgCm2.toPlainString())
        .put("pass", pass);
  }

  private double area(LotState state) {
    if (areaCm2 != null) {
      if (areaCm2.signum() <= 0) {
        throw new Problem.WrongUse(LotSays.NO_AREA);
      }
      return areaCm2.doubleValue();
    }
    return LotMasses.areaCm2(state)
        .orElseThrow(() -> new Problem.WrongUse(LotSays.NO_DIAMETER, lot));
  }

  private Problem.Refused unknown() {
    return new Problem.Refused(LotSays.NO_LOT, lot);
  }
}
