package org.siltbench.station.command.prepare;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.advice.BenchLimits;
import org.siltbench.calc.advice.FilterCount;
import org.siltbench.calc.advice.SamplingPlan;
import org.siltbench.calc.advice.StormAdvice;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.UncertaintyInputs;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
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

  @Override
  public int run(Session session) {
    SamplingPlan plan = plan();
    FilterCount count = plan.filters();
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("samples_per_site", plan.samplesPerSite());
    document.put("samples", count.samples());
    document.put("duplicates", count.duplicates());
    document.put("field_blanks", count.fieldBlanks());
    document.put("trip_blanks", count.tripBlanks());
    document.put("method_blanks", count.methodBlanks());
    document.put("controls", count.controlFilters());
    document.put("spares", count.spares());
    document.put("total", count.total());
    String advice = advice(session);
    document.forEach((word, number) -> session.fact(word.replace('_', ' ') + ": " + number));
    if (!advice.isEmpty()) {
      document.put("advice", advice);
      session.fact(advice);
    }
    document.put("batch_new", words(count));
    session.fact("siltbench batch new --name NAME --lot LOT --method " + method + words(count));
    session.document(document);
    return 0;
  }

  private SamplingPlan plan() {
    try {
      return new SamplingPlan(
          Times.span(every),
          Times.span(length),
          sites,
          trips,
          fieldBlanks,
          duplicates,
          spares,
          controls,
          20);
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse("This plan is not possible: " + e.getMessage() + ".", "");
    }
  }

  private static String words(FilterCount count) {
    return " --count "
        + count.total()
        + " --duplicates "
        + count.duplicates()
        + " --field-blanks "
        + count.fieldBlanks()
        + " --trip-blanks "
        + count.tripBlanks()
        + " --method-blanks "
        + count.methodBlanks()
        + " --controls "
        + count.controlFilters()
        + " --spares "
        + count.spares();
  }

  private String advice(Session session) {
    if (expect == null) {
      return "";
    }
    double[] range = range(expect);
    try {
      BenchLimits limits = limits(session.methods().get(method), range(volumes));
      return StormAdvice.of(limits, range[0], range[1], target / 100).sentence();
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse("No advice is possible: " + e.getMessage() + ".", "");
    }
  }

  private static BenchLimits limits(Method method, double[] volumes) {
    UncertaintyInputs u = method.uncertainty();
    double residue = Math.hypot(Math.hypot(u.massMg(), u.moistureMg()) * Math.sqrt(2), u.blankMg());
    double relative = Math.hypot(u.volumeCalibrationPct(), u.volumeTemperaturePct()) / 100;
    return new BenchLimits(
        method.residue().min().milligrams(),
        method.residue().max().milligrams(),
        residue,
        u.volumeReadingMl(),
        relative,
        volumes[0],
        volumes[1]);
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
