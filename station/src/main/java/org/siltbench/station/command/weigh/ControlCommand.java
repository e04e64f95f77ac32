package org.siltbench.station.command.weigh;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.BlankCorrection;
import org.siltbench.calc.blank.BlankKind;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.life.About;
import org.siltbench.station.work.check.ControlSheet;
import org.siltbench.station.work.check.ControlValues;
import picocli.CommandLine.Option;

/** {@code control}. */
final class ControlCommand implements Task {

  @Option(
      names = "--balance",
      paramLabel = "NAME",
      description = "the checks of this balance; without a name where there is only one balance")
  private @Nullable String balance;

  @Option(names = "--weight", paramLabel = "NAME", description = "only checks with this weight")
  private String weight = "";

  @Option(
      names = "--blanks",
      paramLabel = "METHOD",
      description = "the blanks of this method, in place of checks")
  private @Nullable String method;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      description = "which blanks; default: ${DEFAULT-VALUE}")
  private String kind = "method-blank";

  @Override
  public int run(Session session) {
    Bench bench = session.existingBench();
    ControlSheet sheet = method == null ? checks(bench) : blanks(bench, method);
    session.document(document(sheet));
    tell(session, sheet);
    return 0;
  }

  private ControlSheet checks(Bench bench) {
    String name = balance == null ? only(bench) : balance;
    String title = "Checks of balance " + name + (weight.isEmpty() ? "" : " with " + weight);
    return ControlSheet.of(title, ControlValues.checks(bench.register(), name, weight));
  }

  private static String only(Bench bench) {
    Set<String> names = new TreeSet<>();
    bench.register().list(About.BALANCE, "", "").forEach(row -> names.add(row.subject().id()));
    if (names.size() != 1) {
      throw new Problem.WrongUse(
          names.isEmpty() ? "No balance is on record." : "There are several balances.",
          names.isEmpty()
              ? "Check one with siltbench checkweight."
              : "Name one with --balance: " + String.join(", ", names) + '.');
    }
    return names.iterator().next();
  }

  private ControlSheet blanks(Bench bench, String key) {
    BlankKind wanted = BlankCorrection.kindOf(kind);
    if (wanted == null) {
      throw new Problem.WrongUse(
          "\"" + kind + "\" is no kind of blank.",
          "Say method-blank, field-blank, trip-blank or control.");
    }
    String title = "Residues of " + kind + "s under " + key;
    return ControlSheet.of(title, ControlValues.blanks(bench.register(), key, wanted));
  }

  private static Map<String, @Nullable Object> document(ControlSheet sheet) {
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    out.put("title", sheet.title());
    ControlSheet.Limits limits = sheet.limits();
    out.put("limits", limits == null ? null : limits(limits));
    List<Map<String, @Nullable Object>> points = new ArrayList<>();
    for (ControlSheet.Point point : sheet.points()) {
      points.add(point(point, limits != null));
    }
    out.put("points", points);
    out.put(
        "signals",
        sheet.signals().stream()
            .map(s -> Map.of("time", s.at().toString(), "of", s.of(), "rule", s.rule()))
            .toList());
    return out;
  }

  private static Map<String, @Nullable Object> point(ControlSheet.Point point, boolean limited) {
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    out.put("time", point.at().toString());
    out.put("of", point.of());
    out.put("mg", point.mg());
    if (limited) {
      out.put("ewma_mg", point.ewma());
      out.put("cusum_high_mg", point.cusumHigh());
      out.put("cusum_low_mg", point.cusumLow());
    }
    return out;
  }

  private static Map<String, Object> limits(ControlSheet.Limits limits) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("centre_mg", limits.centre());
    out.put("sigma_mg", limits.sigma());
    out.put("lower_mg", limits.lower());
    out.put("upper_mg", limits.upper());
    out.put("upper_range_mg", limits.upperRange());
    out.put("ewma_half_width_mg", limits.ewmaHalfWidth());
    out.put("cusum_decision_mg", limits.cusumDecision());
    return out;
  }

  private static void tell(Session session, ControlSheet sheet) {
    session.fact(sheet.title() + ": " + sheet.points().size() + " values");
    ControlSheet.Limits limits = sheet.limits();
    if (limits == null) {
      session.message("Limits need at least 8 values that are not all equal.");
    } else {
      session.fact(
          "mean "
              + figure(limits.centre())
              + " mg, limits "
              + figure(limits.lower())
              + " to "
              + figure(limits.upper())
              + " mg, moving range up to "
              + figure(limits.upperRange())
              + " mg");
    }
    for (ControlSheet.Signal signal : sheet.signals()) {
      session.fact(signal.at() + " " + signal.of() + ": " + signal.rule());
    }
  }

  private static String figure(double value) {
    return ForPeople.value(value, 3, 0);
  }
}
