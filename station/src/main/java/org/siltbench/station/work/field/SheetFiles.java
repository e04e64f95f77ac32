package org.siltbench.station.work.field;

import java.nio.file.Path;
import org.siltbench.calc.method.Method;
import org.siltbench.labels.Papers;
import org.siltbench.labels.sheet.FieldSheet;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.paper.Imprints;
import org.siltbench.station.work.paper.PaperFolder;

/** The field sheet of a batch in the lab's papers: as a PDF, and as a table to fill in. */
public record SheetFiles(Path paper, Path table, int filters) {

  /** Makes both, in place of older ones. */
  public static SheetFiles write(OpenLab lab, BatchState batch, Method method, String trip) {
    FieldSheet sheet = FieldSheets.of(lab.register(), batch, method, trip);
    String name = "field-" + batch.code();
    Path paper =
        PaperFolder.write(lab, name + ".pdf", to -> Papers.fieldSheet(sheet, Imprints.of(lab), to));
    Path table = PaperFolder.write(lab, name + ".csv", to -> FieldSheets.table(sheet, method, to));
    return new SheetFiles(paper, table, sheet.lines().size());
  }
}
