package org.siltbench.station.work.results;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.calc.result.Explanation;
import org.siltbench.labels.Imprint;
import org.siltbench.labels.Papers;
import org.siltbench.labels.chart.ChartLayout;
import org.siltbench.labels.chart.ControlChart;
import org.siltbench.labels.chart.Mark;
import org.siltbench.labels.chart.TimeChart;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.json.Json;
import org.siltbench.station.life.BalanceState.Check;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.Progress;
import org.siltbench.station.work.chart.PngChart;
import org.siltbench.station.work.chart.SvgChart;
import org.siltbench.station.work.check.CheckChart;
import org.siltbench.station.work.paper.Imprints;
import org.siltbench.station.work.paper.PaperFile;
import org.siltbench.station.work.paper.PaperFolder;

/** Writes what leaves the lab: tables with their description, the report, the pictures. */
public final class ResultFiles {

  private static final double WIDTH = 180;
  private static final double HEIGHT = 100;

  private final Bench bench;
  private final BatchResults results;
  private final Path folder;
  private final List<Path> written = new ArrayList<>();
  private final Progress progress;

  private ResultFiles(Bench bench, BatchResults results, Path folder, Progress progress) {
    this.progress = progress;
    this.bench = bench;
    this.results = results;
    this.folder = folder;
  }

  /** Writes all files into a folder, which is made if it is not there. */
  public static List<Path> write(Bench bench, BatchResults results, Path folder, String client) {
    return write(bench, results, folder, client, false);
  }

  /**
   * The same.
   *
   * @param compared the report holds both ways of uncertainty against each other
   */
  public static List<Path> write(
      Bench bench, BatchResults results, Path folder, String client, boolean compared) {
    return write(bench, results, folder, client, compared, Progress.UNWATCHED);
  }

  /**
   * The same, watched. Stopped between two steps, it leaves the files written so far.
   *
   * @throws Problem.Refused if it was stopped
   */
  public static List<Path> write(
      Bench bench,
      BatchResults results,
      Path folder,
      String client,
      boolean compared,
      Progress progress) {
    ResultFiles files = new ResultFiles(bench, results, folder, progress);
    PaperFolder.make(folder);
    files.writeAll(client, compared);
    return List.copyOf(files.written);
  }

  /** Writes the report alone, named by its number; a draft is named so. */
  public static Path report(Bench bench, BatchResults results, Path folder, String client) {
    ResultFiles files = new ResultFiles(bench, results, folder, Progress.UNWATCHED);
    PaperFolder.make(folder);
    List<String> released = results.batch().releases();
    String name = released.isEmpty() ? "draft" : released.get(released.size() - 1);
    String plain = name.replaceAll("[^A-Za-z0-9._-]+", "-");
    CheckCover checks = new CheckCover(bench.register(), bench.clock().getZone());
    Trace trace = new Trace(bench.register(), checks, results);
    files.report(plain + ".pdf", client, files.control(trace, checks), false);
    return files.written.get(0);
  }

  private @org.jspecify.annotations.Nullable ControlChart control(Trace trace, CheckCover checks) {
    List<Check> weighed = new ArrayList<>();
    trace.balances().forEach(balance -> weighed.addAll(checks.of(balance)));
    return CheckChart.of(weighed);
  }

  private void writeAll(String client, boolean compared) {
    CheckCover checks = new CheckCover(bench.register(), bench.clock().getZone());
    Trace trace = new Trace(bench.register(), checks, results);
    step(0, "tables");
    tables(trace);
    bytes("results.json", json(ResultTable.document(results)));
    bytes("method.txt", results.method().text().getBytes(StandardCharsets.UTF_8));
    ControlChart control = control(trace, checks);
    bytes("explanations.txt", explanations().getBytes(StandardCharsets.UTF_8));
    step(1, "report");
    report("report.pdf", client, control, compared);
    step(2, "pictures");
    TimeChart time = Charts.concentration(results);
    if (time != null) {
      picture("concentration", time.title().english(), ChartLayout.of(time, WIDTH, HEIGHT));
    }
    if (control != null) {
      picture("checks", control.title().english(), ChartLayout.of(control, WIDTH, HEIGHT));
    }
  }

  private void step(int done, String what) {
    if (!progress.goesOn(what, done, 3)) {
      throw new Problem.Refused(ResultsSays.STOPPED, what, written.size());
    }
  }

  private static byte[] json(Object tree) {
    return (Json.write(Plain.tree(tree)) + '\n').getBytes(StandardCharsets.UTF_8);
  }

  private void tables(Trace trace) {
    DataPackage described =
        new DataPackage(
                results.batch().name(),
                results.method().parameter().title() + ", batch " + results.batch().name(),
                Facts.time(OffsetDateTime.now(bench.clock()).truncatedTo(ChronoUnit.SECONDS)),
                "Masses in g as displayed; residues in mg; concentrations in mg/L. Cells that a"
                    + " spreadsheet would run as a formula start with an apostrophe.")
            .provenance(provenance());
    List<Dataset> all = List.of(ResultTable.dataset(results), trace.weighings(), trace.budgets());
    for (Dataset table : all) {
      byte[] csv = table.csv();
      bytes(table.path(), csv);
      described.add(table, csv);
    }
    bytes("datapackage.json", described.json());
    bytes("results.xlsx", Spreadsheet.of(all, provenance()));
  }

  private Map<String, Object> provenance() {
    Imprint imprint = Imprints.of(bench);
    Map<String, Object> facts = new LinkedHashMap<>();
    facts.put("bench", bench.code());
    facts.put("batch", results.batch().code());
    facts.put("ledger_head", String.valueOf(imprint.head()));
    facts.put("ledger_entries", imprint.entries());
    facts.put("method", results.method().key());
    facts.put("method_standard", results.method().standard());
    facts.put("method_edition", results.method().edition());
    facts.put(
        "method_sha256",
        DataPackage.sha256(results.method().text().getBytes(StandardCharsets.UTF_8)));
    facts.put("practice", bench.practice());
    return facts;
  }

  /** How each result came about, in sentences. */
  private String explanations() {
    StringBuilder out = new StringBuilder();
    for (BatchResults.FilterResult row : results.rows()) {
      out.append(row.state().id()).append('\n');
      for (String line : Explanation.of(row.result(), results.method())) {
        out.append("  ").append(line).append('\n');
      }
    }
    return out.toString();
  }

  private void report(
      String name,
      String client,
      @org.jspecify.annotations.Nullable ControlChart control,
      boolean compared) {
    LocalDate today = LocalDate.now(bench.clock());
    var paper =
        new ReportPaper(
                bench.register(),
                results,
                new CheckCover(bench.register(), bench.clock().getZone()),
                client)
            .comparing(compared)
            .report(control, today);
    Path file = folder.resolve(name);
    PaperFile.write(file, out -> Papers.testReport(paper, Imprints.of(bench), out));
    written.add(file);
  }

  private void picture(String name, String title, List<Mark> marks) {
    bytes(name + ".svg", SvgChart.of(marks, WIDTH, HEIGHT, title).getBytes(StandardCharsets.UTF_8));
    Path png = folder.resolve(name + ".png");
    PaperFile.write(png, out -> PngChart.write(marks, WIDTH, HEIGHT, out));
    written.add(png);
    Path pdf = folder.resolve(name + ".pdf");
    PaperFile.write(
        pdf, out -> Papers.picture(title, marks, WIDTH, HEIGHT, Imprints.of(bench), out));
    written.add(pdf);
  }

  private void bytes(String name, byte[] content) {
    Path file = folder.resolve(name);
    PaperFile.write(file, out -> out.write(content));
    written.add(file);
  }
}
