package org.siltbench.station.command.prepare;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.air.Buoyancy;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.weights.CertificateDrift;
import org.siltbench.calc.weights.ClassAcceptance;
import org.siltbench.calc.weights.WeightClass;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.equip.Certificates;
import org.siltbench.station.work.equip.WeightRecord;
import picocli.CommandLine.Option;

/** {@code weight}. */
final class WeightNote implements Task {

  @Option(names = "--name", required = true, paramLabel = "NAME", description = "its name")
  private String name = "";

  @Option(names = "--nominal", required = true, paramLabel = "G", description = "nominal mass, g")
  private String nominal = "";

  @Option(
      names = "--certified",
      required = true,
      paramLabel = "G",
      description = "conventional mass on its certificate, g")
  private String certified = "";

  @Option(
      names = "--U",
      required = true,
      paramLabel = "MG",
      description = "expanded uncertainty on its certificate, mg")
  private BigDecimal expanded = BigDecimal.ZERO;

  @Option(
      names = "--k",
      paramLabel = "K",
      description = "the certificate's coverage factor; default: ${DEFAULT-VALUE}")
  private BigDecimal k = BigDecimal.valueOf(2);

  @Option(names = "--certificate", paramLabel = "TEXT", description = "the certificate's number")
  private @Nullable String certificate;

  @Option(names = "--due", paramLabel = "DATE", description = "when it must be calibrated again")
  private @Nullable String due;

  @Option(
      names = "--class",
      paramLabel = "CLASS",
      description = "hold the certificate against this class: E2, F1, F2 or M1")
  private @Nullable String claimed;

  @Option(
      names = "--density",
      paramLabel = "KG_M3",
      description = "the weight's density, to tell its true mass beside the conventional one")
  private @Nullable Double density;

  @Override
  public int run(Session session) {
    WeightRecord record =
        new WeightRecord(
            name, grams(nominal), grams(certified), expanded, k, certificate, Dates.day(due));
    ClassAcceptance judged = judged(record);
    Bench bench = session.bench();
    record.record(bench);
    Map<String, @Nullable Object> document = new LinkedHashMap<>();
    document.put("weight", record.name());
    session.fact("weight " + record.name());
    if (judged != null) {
      tell(session, document, judged);
    }
    Double made = density;
    if (made != null) {
      double mass = trueMass(record.certified().grams(), made);
      document.put("true_mass_g", mass);
      session.fact(String.format(Locale.ROOT, "true mass %.9f g at %s kg/m³", mass, made));
    }
    tell(session, document, Certificates.of(bench.register(), record.name()).drift());
    session.document(document);
    return 0;
  }

  private static double trueMass(double conventional, double made) {
    if (!(made > 500 && made < 25_000)) {
      throw new Problem.WrongUse(made + " kg/m³ is no weight's density.", "Steel has about 8000.");
    }
    return Buoyancy.trueMass(conventional, made);
  }

  /** Before anything is recorded, so that a wrong class is told first. */
  private @Nullable ClassAcceptance judged(WeightRecord record) {
    if (claimed == null) {
      return null;
    }
    try {
      WeightClass named = WeightClass.valueOf(claimed.strip().toUpperCase(Locale.ROOT));
      BigDecimal twofold =
          expanded.multiply(BigDecimal.valueOf(2)).divide(k, MathContext.DECIMAL32);
      return ClassAcceptance.judge(
          named, record.nominal(), record.certified(), Mass.ofMilligrams(twofold.doubleValue()));
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(
          "No class limit: " + e.getMessage() + '.',
          "Classes are E2, F1, F2 and M1, for the nominal masses of OIML R 111-1 and none between.");
    }
  }

  private static void tell(
      Session session, Map<String, @Nullable Object> document, ClassAcceptance judged) {
    document.put("class_limit_mg", judged.limit().toMilligrams());
    document.put("class_error_mg", judged.error().toMilligrams());
    document.put("small_uncertainty", judged.smallUncertainty());
    document.put("within_reduced_limit", judged.withinReducedLimit());
    document.put("class_accepted", judged.accepted());
    session.fact(
        (judged.accepted() ? "accepted" : "NOT accepted")
            + " for its class: error "
            + judged.error().toMilligrams()
            + " mg, limit "
            + judged.limit().toMilligrams()
            + " mg");
    if (!judged.smallUncertainty()) {
      session.message("The certificate's U (k = 2) is more than a third of the class limit.");
    }
    if (!judged.withinReducedLimit()) {
      session.message("The error is beyond the class limit less U.");
    }
  }

  private static void tell(
      Session session, Map<String, @Nullable Object> document, @Nullable CertificateDrift drift) {
    if (drift == null) {
      return;
    }
    document.put("change_mg", drift.change().toMilligrams());
    document.put("normalised_error", drift.normalisedError());
    document.put("u_drift_mg", drift.uncertainty());
    session.fact(
        "changed by " + drift.change().toMilligrams() + " mg since the certificate before");
    if (drift.significant()) {
      session.message(
          "The two certificates disagree by more than their U: the weight changed, or one is"
              + " wrong.");
    }
  }

  private static Mass grams(String text) {
    try {
      return Mass.ofGrams(text);
    } catch (NumberFormatException e) {
      throw new Problem.WrongUse(e.getMessage() + ".", "Write grams, as 0.1 or 20.000012.");
    }
  }
}
