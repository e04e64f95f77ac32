package org.siltbench.station.command.prepare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.detection.ReportingLimit;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.UncertaintyInputs;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import org.siltbench.station.life.Role;
import org.siltbench.station.work.plan.FilterPlan;
import picocli.CommandLine.Option;

/** {@code plan}. Needs no lab. */
final class Plan implements Task {

  @Option(
      names = "--every",
      required = true,
      paramLabel = "SPAN",
      description = "time between samples at a site, as 15m")
  private String every = "";

  @Option(
      names = "--for",
      required = true,
      paramLabel = "SPAN",
      description = "how long each site is sampled, as 6h")
  private String length = "";

  @Option(names = "--sites", paramLabel = "N", description = "sites; default: ${DEFAULT-VALUE}")
  private int sites = 1;

  @Option(names = "--trips", paramLabel = "N", description = "trips; default: ${DEFAULT-VALUE}")
  private int trips = 1;

  @Option(
      names = "--field-blank-pct",
      paramLabel = "PCT",
      description = "field blanks per 100 samples; default: ${DEFAULT-VALUE}")
  private double fieldBlanks = 5;

  @Option(
      names = "--duplicate-pct",
      paramLabel = "PCT",
      description = "duplicates per 100 samples; default: ${DEFAULT-VALUE}")
  private double duplicates = 10;

  @Option(
      names = "--spare-pct",
      paramLabel = "PCT",
      description = "spares per 100 filters that go out; default: ${DEFAULT-VALUE}")
  private double spares = 10;

  @Option(
      names = "--controls",
      paramLabel = "N",
      description = "control filters that stay in the lab; default: ${DEFAULT-VALUE}")
  private int controls = 3;

  @Option(
      names = "--method",
      paramLabel = "KEY",
      description = "method for the advice on volumes; default: ${DEFAULT-VALUE}")
  private String method = "sm-2540d-23";

  @Option(
      names = "--expect",
      paramLabel = "LOW..HIGH",
      description = "concentrations expected, mg/L, for the advice on volumes")
  private @Nullable String expect;

  @Option(
      names = "--target",
      paramLabel = "PCT",
      description = "relative standard uncertainty wanted, %%; default: ${DEFAULT-VALUE}")
  private double target = 5;

  @Option(
      names = "--volumes",
      paramLabel = "LOW..HIGH",
      description = "volumes that can be measured out, mL; default: ${DEFAULT-VALUE}")
  private String volumes = "50..1000";

  @Option(
      names = "--blank-sd",
      paramLabel = "MG",
      description = "standard deviation of the blanks' residues, mg, for the reporting limit")
  private double blankSd;

  @Option(
      names = "--grain",
      paramLabel = "UM",
      description = "tell how soon grains of this size have sunk out of an aliquot's way, µm")
  private @Nullable Double grain;

  @Override
  public int run(Session session) {
    FilterPlan plan =
        FilterPlan.of(
            new FilterPlan.Wish(
                Times.span(every),
                Times.span(length),
                sites,
                trips,
                fieldBlanks,
                duplicates,
                spares,
                controls));
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("samples_per_site", plan.samplesPerSite());
    document.put("samples", plan.samples());
    document.put("duplicates", plan.duplicates());
    document.put("field_blanks", plan.of(Role.FIELD_BLANK));
    document.put("trip_blanks", plan.of(Role.TRIP_BLANK));
    document.put("method_blanks", plan.of(Role.METHOD_BLANK));
    document.put("controls", plan.of(Role.CONTROL));
    document.put("spares", plan.of(Role.SPARE));
    document.put("total", plan.total());
    String advice = expect == null ? "" : advised(session, plan, expect).advice().english();
    document.forEach((word, number) -> session.fact(word.replace('_', ' ') + ": " + number));
    if (!advice.isEmpty()) {
      document.put("advice", advice);
      session.fact(advice);
    }
    limits(session, document);
    if (grain != null) {
      String sinking = Sinking.sentence(grain);
      document.put("sinking", sinking);
      session.fact(sinking);
    }
    document.put("batch_new", words(plan));
    session.fact("siltbench batch new --name NAME --lot LOT --method " + method + words(plan));
    session.document(document);
    return 0;
  }

  private static String words(FilterPlan plan) {
    return " --count "
        + plan.total()
        + " --duplicates "
        + plan.duplicates()
        + " --field-blanks "
        + plan.of(Role.FIELD_BLANK)
        + " --trip-blanks "
        + plan.of(Role.TRIP_BLANK)
        + " --method-blanks "
        + plan.of(Role.METHOD_BLANK)
        + " --controls "
        + plan.of(Role.CONTROL)
        + " --spares "
        + plan.of(Role.SPARE);
  }

  private FilterPlan advised(Session session, FilterPlan plan, String expected) {
    double[] range = range(expected);
    double[] measured = range(volumes);
    return plan.advised(
        session.methods().get(method),
        new FilterPlan.Water(range[0], range[1], measured[0], measured[1], target));
  }

  /** What can be reported at both ends of the volumes. */
  private void limits(Session session, Map<String, Object> document) {
    if (expect == null && blankSd == 0) {
      return;
    }
    double[] ends = range(volumes);
    Method chosen = session.methods().get(method);
    List<Map<String, Object>> limits = new ArrayList<>();
    for (double ml : ends) {
      ReportingLimit limit = limit(chosen, ml);
      Map<String, Object> fields = new LinkedHashMap<>();
      fields.put("volume_ml", ml);
      fields.put("limit_mg_l", limit.value());
      fields.put("decided_by", limit.decidedBy().name().toLowerCase(Locale.ROOT));
      limits.add(fields);
      session.fact(
          "with "
              + ForPeople.value(ml, 4, 0)
              + " mL the reporting limit is "
              + ForPeople.limit(limit.value())
              + " mg/L, decided by the "
              + fields.get("decided_by"));
    }
    document.put("reporting_limits", limits);
  }

  private ReportingLimit limit(Method chosen, double ml) {
    Mass stated = chosen.report().limitResidue();
    UncertaintyInputs u = chosen.uncertainty();
    try {
      return ReportingLimit.of(
          stated == null ? 0 : stated.milligrams(),
          Math.hypot(u.massMg(), u.moistureMg()) * Math.sqrt(2),
          blankSd,
          ml / 1000);
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse("No limit is possible: " + e.getMessage() + ".", "");
    }
  }

  private static double[] range(String text) {
    String[] ends = text.split("\\.\\.", 2);
    try {
      double low = Double.parseDouble(ends[0]);
      return new double[] {low, ends.length == 2 ? Double.parseDouble(ends[1]) : low};
    } catch (NumberFormatException e) {
      throw new Problem.WrongUse("\"" + text + "\" is no range.", "Write it as 20..800.");
    }
  }
}
