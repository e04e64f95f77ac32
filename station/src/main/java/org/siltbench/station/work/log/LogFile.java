package org.siltbench.station.work.log;

import java.nio.file.Path;
import org.siltbench.calc.method.Method;
import org.siltbench.labels.Papers;
import org.siltbench.labels.log.LogSheet;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.paper.Imprints;
import org.siltbench.station.work.paper.PaperFolder;

/** The log sheet of a batch in the lab's papers. */
public final class LogFile {

  private LogFile() {}

  /** Draws it, in place of an older one; answers the file. */
  public static Path write(OpenLab lab, MethodBook methods, BatchState batch) {
    Method method = methods.inForce(lab.register(), batch.method());
    LogSheet sheet = LogSheets.of(lab.register(), batch, method);
    return PaperFolder.write(
        lab, "log-" + batch.code() + ".pdf", to -> Papers.logSheet(sheet, Imprints.of(lab), to));
  }
}
