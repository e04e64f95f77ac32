package org.siltbench.station.work.load;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.load.DischargeLoop;
import org.siltbench.calc.reason.Reason;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.labels.Imprint;
import org.siltbench.labels.Papers;
import org.siltbench.labels.PapersSay;
import org.siltbench.labels.chart.ChartLayout;
import org.siltbench.labels.chart.LoopChart;
import org.siltbench.labels.chart.Mark;
import org.siltbench.station.table.SafeCells;
import org.siltbench.station.work.chart.PngChart;
import org.siltbench.station.work.chart.SvgChart;
import org.siltbench.station.work.paper.PaperFile;
import org.siltbench.station.work.paper.PaperFolder;

/** Writes a load: the table of its moments, and each site's loop as a picture. */
public final class LoadFiles {

  private static final double WIDTH = 120;
  private static final double HEIGHT = 100;
  private static final int DIGITS = 4;

  private final Loads loads;
  private final LoadUnit unit;
  private final Path folder;
  private final @Nullable Imprint imprint;
  private final List<Path> written = new ArrayList<>();

  private LoadFiles(Loads loads, LoadUnit unit, Path folder, @Nullable Imprint imprint) {
    this.loads = loads;
    this.unit = unit;
    this.folder = folder;
    this.imprint = imprint;
  }

  /**
   * Writes all files into a folder, which is made if it is not there.
   *
   * @param imprint for the pictures as PDF; null writes them as SVG and PNG only
   */
  public static List<Path> write(
      Loads loads, LoadUnit unit, Path folder, @Nullable Imprint imprint) {
    LoadFiles files = new LoadFiles(loads, unit, folder, imprint);
    PaperFolder.make(folder);
    files.table();
    loads.sites().forEach(files::loop);
    return List.copyOf(files.written);
  }

  private void table() {
    Path file = folder.resolve("load.csv");
    PaperFile.write(
        file,
        to -> {
          CsvWriter csv =
              CsvWriter.builder().build(new OutputStreamWriter(to, StandardCharsets.UTF_8));
          csv.writeRecord(
              "site",
              "sample",
              "time",
              "q_" + unit.flow(),
              "conc_mg_l",
              "load_" + unit.mass() + "_day");
          for (SiteLoad site : loads.sites()) {
            site.moments().forEach(moment -> csv.writeRecord(line(site, moment)));
          }
          csv.flush();
        });
    written.add(file);
  }

  private List<String> line(SiteLoad site, SiteLoad.Moment moment) {
    return List.of(
        SafeCells.of(site.site()),
        SafeCells.of(moment.sample()),
        Loads.text(moment.at()),
        ForPeople.value(unit.fromCubicMetres(moment.discharge()), DIGITS, 0),
        ForPeople.value(moment.mgPerL(), DIGITS, 0),
        ForPeople.value(unit.fromTonnes(moment.tonnesPerDay()), DIGITS, 0));
  }

  private void loop(SiteLoad site) {
    String plain = site.site().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9._-]+", "-");
    String name = plain.isEmpty() ? "loop" : "loop-" + plain;
    String title = chart(site, unit).title().english();
    List<Mark> marks = ChartLayout.of(chart(site, unit), WIDTH, HEIGHT);
    add(
        name + ".svg",
        out ->
            out.write(SvgChart.of(marks, WIDTH, HEIGHT, title).getBytes(StandardCharsets.UTF_8)));
    add(name + ".png", out -> PngChart.write(marks, WIDTH, HEIGHT, out));
    Imprint by = imprint;
    if (by != null) {
      add(name + ".pdf", out -> Papers.picture(title, marks, WIDTH, HEIGHT, by, out));
    }
  }

  private void add(String name, PaperFile.Drawing drawing) {
    Path file = folder.resolve(name);
    PaperFile.write(file, drawing);
    written.add(file);
  }

  /** The loop of a site, for any surface. */
  public static LoopChart chart(SiteLoad site, LoadUnit unit) {
    DischargeLoop loop = site.loop();
    Reason turn =
        switch (loop.turn()) {
          case CLOCKWISE -> PapersSay.CHART_CLOCKWISE.with();
          case ANTICLOCKWISE -> PapersSay.CHART_ANTICLOCKWISE.with();
          case NONE -> PapersSay.CHART_NO_LOOP.with();
        };
    Reason title = site.site().isEmpty() ? turn : PapersSay.CHART_AT.with(site.site(), turn);
    List<LoopChart.Point> points =
        loop.points().stream()
            .map(p -> new LoopChart.Point(unit.fromCubicMetres(p.discharge()), p.concentration()))
            .toList();
    return new LoopChart(title, "mg/L", PapersSay.CHART_DISCHARGE.with(unit.flowTitle()), points);
  }
}
