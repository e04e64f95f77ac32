package org.siltbench.station.work.results;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.BlankRule;
import org.siltbench.calc.duplicates.DuplicateRule;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Span;
import org.siltbench.calc.result.Concentration;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.calc.result.Further;
import org.siltbench.calc.result.PairVerdict;
import org.siltbench.calc.result.Recovery;
import org.siltbench.calc.result.ResultRow;
import org.siltbench.calc.result.RowRole;
import org.siltbench.calc.uncertainty.Part;
import org.siltbench.labels.chart.ControlChart;
import org.siltbench.labels.report.TestReport;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BalanceState.InSpite;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.paper.InPrint;
import org.siltbench.station.work.results.BatchResults.FilterResult;

/** Makes the test report of a batch: a draft until its results are released. */
final class ReportPaper {

  private static final DateTimeFormatter DAY_AND_MINUTE =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

  private final RegisterView register;
  private final BatchResults results;
  private final CheckCover cover;
  private final String client;
  private final Optional<Fields> release;
  private boolean compared;
  private final Set<Flag> used = EnumSet.noneOf(Flag.class);

  ReportPaper(RegisterView register, BatchResults results, CheckCover cover, String client) {
    this.cover = cover;
    this.register = register;
    this.results = results;
    this.client = client;
    this.release =
        register.history(About.batch(results.batch().code())).stream()
            .filter(entry -> entry.kind().equals("release"))
            .reduce((a, b) -> b)
            .map(Fields::of);
  }

  TestReport report(@Nullable ControlChart checks, LocalDate today) {
    List<TestReport.Result> rows = rows();
    List<TestReport.Blank> blanks = blanks();
    return new TestReport(
        text("report", "draft"),
        release.flatMap(fields -> fields.find("replaces")).orElse(null),
        client,
        dates(today),
        text("analyst", String.join(", ", analysts())),
        text("approver", ""),
        results.method().parameter().title(),
        results.method().standard() + ", " + results.method().edition(),
        results.batch().code() + " " + results.batch().name(),
        coverage(),
        rows,
        Charts.concentration(results),
        blanks,
        duplicates(),
        checks,
        budget(),
        used.stream().map(flag -> new TestReport.FlagMeaning(flag.word(), flag.means())).toList(),
        statements());
  }

  /** The same with both ways of uncertainty held against each other. */
  ReportPaper comparing(boolean both) {
    compared = both;
    return this;
  }

  private String text(String field, String otherwise) {
    return release.flatMap(fields -> fields.find(field)).orElse(otherwise);
  }

  private Set<String> analysts() {
    Set<String> out = new TreeSet<>();
    results.rows().forEach(row -> row.state().post().stream().map(Weighed::by).forEach(out::add));
    return out;
  }

  private TestReport.Dates dates(LocalDate today) {
    return new TestReport.Dates(
        span(records().flatMap(f -> f.time("collected").stream())),
        span(received()),
        span(results.rows().stream().flatMap(r -> r.state().post().stream()).map(Weighed::at)),
        today.toString());
  }

  private Stream<Fields> records() {
    return results.rows().stream()
        .flatMap(row -> row.state().record().stream())
        .map(record -> record.fields());
  }

  private Stream<OffsetDateTime> received() {
    return results.rows().stream()
        .flatMap(row -> row.state().record().stream())
        .flatMap(record -> register.entry(record.ref()).stream())
        .map(Entry::at);
  }

  private static String span(Stream<OffsetDateTime> times) {
    List<LocalDate> days = times.map(OffsetDateTime::toLocalDate).sorted().toList();
    if (days.isEmpty()) {
      return "";
    }
    LocalDate first = days.get(0);
    LocalDate last = days.get(days.size() - 1);
    return first.equals(last) ? first.toString() : first + " to " + last;
  }

  private String coverage() {
    var inputs = results.method().uncertainty();
    Double k = inputs.k();
    if (k != null) {
      return "k = " + k;
    }
    double percent = 100 * Objects.requireNonNullElse(inputs.probability(), 0.95);
    return String.format(Locale.ROOT, "coverage %.0f %%, k from Student's t", percent);
  }

  private List<TestReport.Result> rows() {
    Map<String, List<FilterResult>> samples = new LinkedHashMap<>();
    for (FilterResult row : results.rows()) {
      if (row.result().input().role().isWater()) {
        String sample = row.note("sample").isEmpty() ? row.state().id() : row.note("sample");
        samples.computeIfAbsent(sample, k -> new ArrayList<>()).add(row);
      }
    }
    List<TestReport.Result> out = new ArrayList<>();
    samples.forEach((sample, filters) -> out.add(result(sample, filters)));
    return out;
  }

  private TestReport.Result result(String sample, List<FilterResult> filters) {
    FilterResult first = filters.get(0);
    Concentration c = first.result().concentration();
    Set<Flag> flags = EnumSet.noneOf(Flag.class);
    filters.forEach(row -> flags.addAll(row.result().flags()));
    used.addAll(flags);
    return new TestReport.Result(
        sample,
        first.note("site"),
        collected(first),
        String.join(" ", filters.stream().map(row -> InPrint.id(row.state().id())).toList()),
        String.join(" + ", filters.stream().map(ReportPaper::volume).toList()),
        String.join(" + ", filters.stream().map(ReportPaper::residue).toList()),
        c == null ? "no volume" : shown(c, first.result()),
        c == null ? "" : ForPeople.uncertainty(c.expanded()),
        flags.stream().map(Flag::word).toList());
  }

  /** With the decimals of the two masses, so that a column reads evenly. */
  private static String residue(FilterResult row) {
    String digits = row.state().postMass().or(row.state()::preMass).map(Weighed::digits).orElse("");
    return InPrint.residue(row.result().residue(), digits);
  }

  /** Day and minute as a person writes them; what the notes say where that is no time. */
  private static String collected(FilterResult row) {
    return row.state()
        .record()
        .flatMap(record -> record.fields().time("collected"))
        .map(DAY_AND_MINUTE::format)
        .orElseGet(() -> row.note("collected"));
  }

  private String shown(Concentration c, ResultRow row) {
    return ForPeople.result(c.mgPerL(), results.method().report().digits(), row.limitMgPerL());
  }

  private static String volume(FilterResult row) {
    return row.state().record().flatMap(r -> r.volume()).map(v -> v.toMillilitres()).orElse("–");
  }

  private List<TestReport.Blank> blanks() {
    List<TestReport.Blank> out = new ArrayList<>();
    for (FilterResult row : results.rows()) {
      RowRole role = row.result().input().role();
      if (!role.isWater()) {
        boolean pass = !row.result().flags().contains(Flag.BLANK_HIGH);
        used.addAll(row.result().flags());
        out.add(
            new TestReport.Blank(
                InPrint.id(row.state().id()),
                InPrint.words(role.word()),
                residue(row) + " mg",
                limit(),
                pass ? "within" : "out of limits",
                pass));
      }
      Further further = row.result().further();
      Recovery recovery = further == null ? null : further.recovery();
      if (recovery != null) {
        out.add(reference(row, recovery));
      }
    }
    return out;
  }

  private TestReport.Blank reference(FilterResult row, Recovery recovery) {
    boolean pass = !row.result().flags().contains(Flag.RECOVERY_OUT);
    Span span = results.method().sample().recoveryPct();
    return new TestReport.Blank(
        InPrint.id(row.state().id()),
        InPrint.words(row.result().input().role().word()),
        ForPeople.value(recovery.percent(), 3, 0) + " % found",
        span == null
            ? "none"
            : ForPeople.value(span.low(), 3, 0)
                + " to "
                + ForPeople.value(span.high(), 3, 0)
                + " %",
        pass ? "within" : "out of limits",
        pass);
  }

  private String limit() {
    BlankRule rule = results.method().blank();
    var limit = rule.limit();
    if (limit != null) {
      return "±" + limit.toMilligrams() + " mg";
    }
    Double concentration = rule.limitMgPerL();
    return concentration == null ? "none" : "±" + concentration + " mg/L";
  }

  private List<TestReport.Duplicate> duplicates() {
    List<TestReport.Duplicate> out = new ArrayList<>();
    for (PairVerdict pair : results.report().pairs()) {
      var verdict = pair.verdict();
      out.add(
          new TestReport.Duplicate(
              pair.pair(),
              InPrint.words(pair.kind()),
              number(pair.first()),
              number(pair.second()),
              verdict == null ? "not compared" : withUnit(verdict.value(), verdict.basis()),
              verdict == null ? "" : withUnit(verdict.limit(), verdict.basis()),
              verdict != null && verdict.agrees()));
    }
    return out;
  }

  private static String withUnit(double value, DuplicateRule.Basis basis) {
    String unit = basis == DuplicateRule.Basis.PERCENT ? " %" : " mg/L";
    return ForPeople.value(value, 3, 0) + unit;
  }

  private String number(double value) {
    return ForPeople.value(value, results.method().report().digits(), 0);
  }

  /** The budget of the sample in the middle of the range. */
  private List<TestReport.BudgetPart> budget() {
    List<FilterResult> samples =
        results.rows().stream()
            .filter(row -> row.result().concentration() != null)
            .filter(row -> row.result().input().role() == RowRole.SAMPLE)
            .sorted(java.util.Comparator.comparingDouble(row -> value(row)))
            .toList();
    if (samples.isEmpty()) {
      return List.of();
    }
    Concentration typical =
        Objects.requireNonNull(samples.get(samples.size() / 2).result().concentration());
    List<TestReport.BudgetPart> out = new ArrayList<>();
    var budget = typical.budget();
    double[] shares = budget.shares();
    for (int i = 0; i < shares.length; i++) {
      Part part = budget.parts().get(i);
      out.add(
          new TestReport.BudgetPart(
              part.name(),
              ForPeople.uncertainty(part.u()) + " " + part.unit(),
              ForPeople.uncertainty(Math.abs(part.contribution())),
              shares[i]));
    }
    return out;
  }

  private static double value(FilterResult row) {
    Concentration c = row.result().concentration();
    return c == null ? Double.NaN : c.mgPerL();
  }

  private List<String> statements() {
    List<String> out = new ArrayList<>();
    out.add(
        switch (results.method().blank().use()) {
          case NONE -> "Blanks were not looked at.";
          case CONTROL_ONLY -> "Blanks were judged against their limits; nothing was subtracted.";
          case SUBTRACT ->
              "A mean blank of "
                  + ForPeople.value(results.report().correction().milligrams(), 3, 0)
                  + " mg was subtracted from each filter.";
        });
    results.report().flags().forEach(flag -> out.add(flag.means()));
    out.addAll(new FurtherStatements(results).all(compared));
    out.addAll(inSpite());
    text(out, "accepted", "Released with this reason: ");
    results.pending().forEach((id, why) -> pending(out, id, why));
    if (release.isEmpty()) {
      out.add("This is a draft: its results have not been released.");
    }
    return out;
  }

  /** Each supervisor's word under which something of the batch was weighed, once. */
  private List<String> inSpite() {
    Map<String, String> said = new TreeMap<>();
    for (FilterResult row : results.rows()) {
      for (Weighed weighed : row.state().weighings()) {
        cover
            .inSpite(weighed)
            .ifPresent(one -> said.put(one.ref().toString(), sentence(weighed.balance(), one)));
      }
    }
    return List.copyOf(said.values());
  }

  private static String sentence(String balance, InSpite said) {
    return "Balance "
        + balance
        + (said.fault().equals("missing") ? " was not checked: " : " had failed its check: ")
        + said.by()
        + " said on "
        + said.at().format(DAY_AND_MINUTE)
        + " to weigh on all the same, because: "
        + said.reason()
        + " (ledger entry "
        + said.ref()
        + ").";
  }

  private void text(List<String> out, String field, String before) {
    release.flatMap(fields -> fields.find(field)).ifPresent(words -> out.add(before + words));
  }

  private static void pending(List<String> out, String id, String why) {
    boolean never = Set.of("planned", "pre-weighed", "issued").contains(why);
    if (!never) {
      out.add("Filter " + InPrint.id(id) + " has no result: " + why + '.');
    }
  }
}
