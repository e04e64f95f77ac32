package org.siltbench.labels;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.siltbench.labels.code.CodeKind;
import org.siltbench.labels.label.LabelRun;
import org.siltbench.labels.media.*;

class PreviewTest {
  @Test
  void preview() throws Exception {
    Path dir = Path.of("/tmp/lab-preview");
    Files.createDirectories(dir);
    for (Media m : MediaCatalog.builtIn()) {
      for (CodeKind k : CodeKind.values()) {
        for (boolean p : new boolean[] {false, true}) {
          Path f = dir.resolve(m.name() + "-" + k.word() + (p ? "-p" : "") + ".pdf");
          try (OutputStream out = Files.newOutputStream(f)) {
            Papers.labels(
                new LabelRun(AlderFork.labels(24, p), m, k, 203, 1, false),
                AlderFork.imprint(p),
                out);
          } catch (PaperProblem e) {
            System.out.println(f + " " + e.getMessage());
            Files.delete(f);
          }
        }
      }
    }
  }

  interface D {
    void d(OutputStream o) throws Exception;
  }

  void one(String n, D d) throws Exception {
    try (OutputStream out = Files.newOutputStream(Path.of("/tmp/lab-preview", n))) {
      d.d(out);
    }
  }

  @Test
  void papers() throws Exception {
    Files.createDirectories(Path.of("/tmp/lab-preview"));
    one("field.pdf", o -> Papers.fieldSheet(AlderFork.fieldSheet(), AlderFork.imprint(), o));
    one("log.pdf", o -> Papers.logSheet(AlderFork.logSheet(34), AlderFork.imprint(), o));
    one(
        "report.pdf",
        o ->
            Papers.testReport(AlderFork.testReport("Dr. Nguyễn Thị Hạnh"), AlderFork.imprint(), o));
    one(
        "report-p.pdf",
        o -> Papers.testReport(AlderFork.testReport(""), AlderFork.imprint(true), o));
    one("cycle.pdf", o -> Papers.cycleCard(AlderFork.cycleCard(), AlderFork.imprint(), o));
    one(
        "ruler-a4.pdf",
        o -> Papers.rulerPage(MediaCatalog.find("sheet-a4-63.5x38"), 300, AlderFork.imprint(), o));
    one(
        "ruler-50.pdf",
        o -> Papers.rulerPage(MediaCatalog.find("roll-50x25"), 300, AlderFork.imprint(), o));
  }
}
