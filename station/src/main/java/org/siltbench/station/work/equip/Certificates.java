package org.siltbench.station.work.equip;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.weights.CertificateDrift;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.life.Fields;
import org.siltbench.station.register.RegisterView;

/** The certificates recorded of a check weight, and how it changed between the last two. */
public final class Certificates {

  private static final double DAYS_A_YEAR = 365.25;

  private final List<Entry> recorded = new ArrayList<>();

  private Certificates(List<Entry> history) {
    for (Entry entry : history) {
      if (entry.kind().equals("weight.described")) {
        recorded.add(entry);
      }
    }
  }

  /** Those of a weight, by its name. */
  public static Certificates of(RegisterView register, String weight) {
    return new Certificates(register.history(About.weight(weight)));
  }

  /** Relative standard uncertainty of the newest certificate; 0 where none is recorded. */
  public double relativeUncertainty() {
    Optional<Fields> last = last();
    double nominal = nominal();
    double u = last.map(f -> f.number("u_mg", 0)).orElse(0.0);
    return nominal > 0 ? u / nominal : 0;
  }

  /** Relative standard uncertainty to allow for drift; 0 with fewer than two certificates. */
  public double relativeDrift() {
    CertificateDrift drift = drift();
    double nominal = nominal();
    return drift == null || !(nominal > 0) ? 0 : drift.uncertainty() / nominal;
  }

  private double nominal() {
    return last().flatMap(f -> f.mass("nominal_g")).map(Mass::milligrams).orElse(0.0);
  }

  private Optional<Fields> last() {
    return recorded.isEmpty()
        ? Optional.empty()
        : Optional.of(Fields.of(recorded.get(recorded.size() - 1)));
  }

  /** The change between the last two certificates; null with fewer, or of another nominal mass. */
  public @Nullable CertificateDrift drift() {
    int n = recorded.size();
    if (n < 2) {
      return null;
    }
    Fields older = Fields.of(recorded.get(n - 2));
    Fields newer = Fields.of(recorded.get(n - 1));
    Optional<Mass> before = older.mass("certified_g");
    Optional<Mass> after = newer.mass("certified_g");
    if (before.isEmpty() || after.isEmpty() || !sameNominal(older, newer)) {
      return null;
    }
    double days =
        Duration.between(recorded.get(n - 2).at(), recorded.get(n - 1).at()).toHours() / 24.0;
    return CertificateDrift.between(
        before.get(),
        expanded(older),
        after.get(),
        expanded(newer),
        Math.max(1, days) / DAYS_A_YEAR);
  }

  private static boolean sameNominal(Fields older, Fields newer) {
    return older.mass("nominal_g").equals(newer.mass("nominal_g"));
  }

  private static Mass expanded(Fields certificate) {
    return Mass.ofMilligrams(2 * certificate.number("u_mg", 0));
  }
}
