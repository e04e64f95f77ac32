package org.siltbench.station.work.results;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.flag.Flag;
import org.siltbench.labels.chart.ControlChart;
import org.siltbench.labels.report.TestReport;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.life.BalanceState.Check;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Role;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.calculate.ResultColumns;
import org.siltbench.station.work.check.CheckChart;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.paper.InPrint;
import org.siltbench.station.work.results.BatchResults.FilterResult;

/**
 * The results of a batch as a person reads them: rounded by the rules of calculation, the same
 * figures as on the report.
 *
 * @param batch the batch
 * @param report what the paper would say now
 * @param lines one a filter with both masses
 * @param pending filters without a result, and why
 * @param flags what the batch as a whole shows
 */
public record ResultSheet(
    BatchState batch,
    TestReport report,
    List<Line> lines,
    Map<String, String> pending,
    List<Seen> flags) {

  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("MM-dd HH:mm");
  private static final Set<String> UNUSED = Set.of("planned", "pre-weighed", "issued");

  /** How much a flag matters. */
  public enum Weight {
    NOTE,
    WARNING,
    STOP
  }

  /**
   * A flag.
   *
   * @param word its word in tables
   * @param weight how much it matters
   */
  public record Seen(String word, Weight weight) {
    /** What it means, as a sentence. */
    public Words means() {
      return Elsewhere.words(Flag.of(word).reason());
    }

    static Seen of(Flag flag) {
      return new Seen(flag.word(), Weight.valueOf(flag.level().name()));
    }
  }

  /**
   * One filter.
   *
   * @param filter its ID
   * @param role what it was for
   * @param constant yes, no or unknown
   * @param conc the concentration of its sample, or empty
   * @param expanded its expanded uncertainty, or empty
   * @param holds why its result is held back
   * @param released the report it left the lab in, or empty
   */
  public record Line(
      String filter,
      Role role,
      String sample,
      String site,
      String collected,
      String volume,
      String residue,
      String conc,
      String expanded,
      String constant,
      List<Seen> flags,
      List<String> holds,
      String released) {

    /** The weightiest of its flags; empty without any. */
    public Optional<Weight> worst() {
      return flags.stream().map(Seen::weight).max(Weight::compareTo);
    }
  }

  /**
   * Calculates and rounds.
   *
   * @throws org.siltbench.station.Problem.Refused if a row cannot be calculated
   */
  public static ResultSheet of(Bench bench, MethodBook methods, String batch) {
    BatchState state = Batches.require(bench.register(), batch);
    return of(bench, BatchResults.of(bench, methods, state));
  }

  static ResultSheet of(Bench bench, BatchResults results) {
    CheckCover cover = new CheckCover(bench.register(), bench.clock().getZone());
    TestReport report =
        new ReportPaper(bench.register(), results, cover, "")
            .report(checks(bench, results, cover), LocalDate.now(bench.clock()));
    ZoneId zone = bench.clock().getZone();
    return new ResultSheet(
        results.batch(),
        report,
        results.rows().stream().map(row -> line(results, row, zone)).toList(),
        results.pending(),
        results.report().flags().stream().map(Seen::of).toList());
  }

  private static @Nullable ControlChart checks(
      Bench bench, BatchResults results, CheckCover cover) {
    List<Check> weighed = new ArrayList<>();
    new Trace(bench.register(), cover, results)
        .balances()
        .forEach(balance -> weighed.addAll(cover.of(balance)));
    return CheckChart.of(weighed);
  }

  private static Line line(BatchResults results, FilterResult row, ZoneId zone) {
    List<String> shown = ResultColumns.rounded(row.result(), results.method().report().digits());
    String digits = row.state().postMass().map(m -> m.digits()).orElse("");
    return new Line(
        row.state().id(),
        row.state().role(),
        row.note("sample"),
        row.note("site"),
        row.state()
            .record()
            .flatMap(r -> r.fields().time("collected"))
            .map(t -> at(t, zone))
            .orElse(""),
        row.state().record().flatMap(r -> r.volume()).map(v -> v.toMillilitres()).orElse(""),
        InPrint.residue(row.result().residue(), digits),
        shown.get(2),
        shown.get(4),
        shown.get(6),
        row.result().flags().stream().sorted().map(Seen::of).toList(),
        List.copyOf(row.state().holds()),
        row.state().report());
  }

  private static String at(OffsetDateTime time, ZoneId zone) {
    return time.atZoneSameInstant(zone).format(MINUTE);
  }

  /** Filters that were used and have no result yet. */
  public Map<String, String> open() {
    Map<String, String> out = new java.util.LinkedHashMap<>();
    pending.forEach(
        (id, why) -> {
          if (!UNUSED.contains(why)) {
            out.put(id, why);
          }
        });
    return out;
  }

  /** Every flag of its lines, the weightiest first. */
  public List<Seen> allFlags() {
    return lines.stream()
        .flatMap(line -> line.flags().stream())
        .distinct()
        .sorted(java.util.Comparator.comparing(Seen::weight).reversed())
        .toList();
  }
}
