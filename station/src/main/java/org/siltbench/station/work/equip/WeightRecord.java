package org.siltbench.station.work.equip;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.Names;

/**
 * A check weight with its certificate.
 *
 * @param name what people call it
 * @param nominal its nominal mass
 * @param certified its certified conventional mass
 * @param expandedMg the certificate's expanded uncertainty, mg
 * @param k its coverage factor
 * @param certificate the certificate's number
 * @param due when it must be calibrated again
 */
public record WeightRecord(
    String name,
    Mass nominal,
    Mass certified,
    BigDecimal expandedMg,
    BigDecimal k,
    @Nullable String certificate,
    @Nullable LocalDate due) {

  private static final long FAR_OFF = 100;

  /** Refuses a certified mass far from the nominal one, and an uncertainty that is none. */
  public WeightRecord {
    name = Names.check("weight", name);
    long off = Math.abs(certified.nanograms() - nominal.nanograms());
    if (nominal.nanograms() <= 0 || off > nominal.nanograms() / FAR_OFF) {
      throw new Problem.WrongUse(
          EquipSays.CERTIFIED_NOT_FITTING, certified.toGrams(), nominal.toGrams());
    }
    if (expandedMg.signum() < 0 || k.signum() <= 0) {
      throw new Problem.WrongUse(EquipSays.CERTIFICATE);
    }
  }

  /** Records it. */
  public Entry record(Bench bench) {
    BigDecimal standard = expandedMg.divide(k, java.math.MathContext.DECIMAL32);
    Facts facts =
        new Facts()
            .put("weight", name)
            .put("nominal_g", nominal.toGrams())
            .put("certified_g", certified.toGrams())
            .putIf("u_mg", standard.stripTrailingZeros())
            .putIf("certificate", certificate)
            .putIf("due", due == null ? null : (Object) due.toString());
    return bench.act(register -> List.of(facts.draft("weight.described"))).get(0);
  }
}
