package org.siltbench.station.work.results;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.siltbench.calc.result.Concentration;
import org.siltbench.calc.uncertainty.Budget;
import org.siltbench.calc.uncertainty.Part;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.results.BatchResults.FilterResult;
import org.siltbench.station.work.results.Dataset.Column;

/** The tables behind the results: every weighing with its ledger entry, every part of a budget. */
final class Trace {

  private final RegisterView register;
  private final CheckCover checks;
  private final BatchResults results;

  Trace(RegisterView register, CheckCover checks, BatchResults results) {
    this.register = register;
    this.checks = checks;
    this.results = results;
  }

  Dataset weighings() {
    List<Column> columns =
        List.of(
            Column.text("ledger", "ledger entry, BENCH/SEQ"),
            Column.text("filter", "filter ID"),
            Column.text("status", "pre or post"),
            Column.text("purpose", "result, repeat or audit"),
            Column.time("time", "when it was weighed"),
            Column.text("mass_g", "displayed digits, g"),
            Column.number("u_mg", "standard uncertainty of the settled mean, mg"),
            Column.text("balance", "which balance"),
            Column.text("check", "balance check around it: passed, missing or failed"),
            Column.text(
                "check_override", "entry of a supervisor's word to weigh on in spite of it"),
            Column.text("cycle", "drying cycle before it"),
            Column.text("operator", "who weighed"),
            Column.text("origin", "observed, two presses, keyed or stated"),
            Column.text("verdict", "constant-mass verdict"),
            Column.text("corrected_by", "ledger entries that amend it"));
    List<List<String>> rows = new ArrayList<>();
    for (FilterResult row : results.rows()) {
      row.state().weighings().forEach(weighed -> rows.add(weighing(row, weighed)));
    }
    return new Dataset("weighings", "Every weighing behind the results", columns, rows);
  }

  private List<String> weighing(FilterResult row, Weighed weighed) {
    return List.of(
        weighed.ref().toString(),
        row.state().id(),
        weighed.post() ? "post" : "pre",
        weighed.purpose(),
        Facts.time(weighed.at()),
        weighed.digits(),
        Double.toString(weighed.uMg()),
        weighed.balance(),
        checks.around(weighed).name().toLowerCase(java.util.Locale.ROOT),
        checks.inSpite(weighed).map(said -> said.ref().toString()).orElse(""),
        weighed.cycle(),
        weighed.by(),
        origin(weighed),
        weighed.verdict(),
        amendedBy(weighed.ref()));
  }

  private static String origin(Weighed weighed) {
    if (weighed.keyed()) {
      return "keyed";
    } else if (weighed.pressed() && weighed.observed()) {
      return "two presses";
    }
    return weighed.observed() ? "observed" : "stated";
  }

  private String amendedBy(EntryRef ref) {
    return register.amendmentsOf(ref).stream()
        .map(entry -> entry.ref().toString())
        .collect(Collectors.joining(" "));
  }

  Dataset budgets() {
    List<Column> columns =
        List.of(
            Column.text("filter", "filter ID"),
            Column.text("sample", "sample number"),
            Column.text("part", "part of the uncertainty"),
            Column.number("u", "its standard uncertainty, in its unit"),
            Column.text("unit", "the unit of u"),
            Column.number("effect_mg_l", "its effect on the concentration, mg/L"),
            Column.number("share", "its share of the variance, 0 to 1"));
    List<List<String>> rows = new ArrayList<>();
    for (FilterResult row : results.rows()) {
      Concentration c = row.result().concentration();
      if (c != null) {
        budget(row, c.budget(), rows);
      }
    }
    return new Dataset("budgets", "The uncertainty of each concentration by parts", columns, rows);
  }

  private static void budget(FilterResult row, Budget budget, List<List<String>> rows) {
    double[] shares = budget.shares();
    List<Part> parts = budget.parts();
    for (int i = 0; i < shares.length; i++) {
      Part part = parts.get(i);
      rows.add(
          List.of(
              row.state().id(),
              row.note("sample"),
              part.name(),
              Double.toString(part.u()),
              part.unit(),
              Double.toString(Math.abs(part.contribution())),
              Double.toString(shares[i])));
    }
  }

  /** The balances behind the results. */
  Set<String> balances() {
    return results.rows().stream()
        .flatMap(row -> row.state().weighings().stream())
        .map(Weighed::balance)
        .filter(name -> !name.isEmpty())
        .collect(Collectors.toCollection(java.util.TreeSet::new));
  }
}
