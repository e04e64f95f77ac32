package org.siltbench.station.work.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.station.Problem;
import org.siltbench.station.work.receipt.Box;
import org.siltbench.station.work.scan.BagScan;

/** The lines of an imported file as notes for bags. */
public final class ImportedNotes {

  private ImportedNotes() {}

  /**
   * One note for each line.
   *
   * @throws Problem.Refused while a doubt stands
   */
  public static List<Box.Note> of(Preview preview) {
    if (!preview.doubts().isEmpty()) {
      throw new Problem.Refused(ExchangeSays.DOUBTS, preview.doubts().size());
    }
    List<Box.Note> notes = new ArrayList<>();
    for (Preview.Line line : preview.rows()) {
      Map<String, String> cells = new LinkedHashMap<>(line.cells());
      String filter = BagScan.of(cells.getOrDefault("filter", "")).filter().text();
      cells.remove("filter");
      notes.add(new Box.Note(filter, preview.file().getFileName() + ":" + line.line(), cells));
    }
    return notes;
  }
}
