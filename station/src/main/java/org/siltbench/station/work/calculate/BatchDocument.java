package org.siltbench.station.work.calculate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.result.AnalyticalDays;
import org.siltbench.calc.result.BatchReport;
import org.siltbench.calc.result.BlankLimits;
import org.siltbench.calc.result.ForPeople;

/** What a batch as a whole shows, as a tree and in sentences. */
public final class BatchDocument {

  private BatchDocument() {}

  /** The detection limits; null with fewer than 7 blanks of the kind the method counts. */
  public static @Nullable Map<String, Object> detection(BatchReport report) {
    BlankLimits limits = BlankLimits.of(report);
    if (limits == null) {
      return null;
    }
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("blanks", limits.kind().word());
    out.put("n", limits.detection().n());
    out.put("mean_mg", limits.detection().mean());
    out.put("s_mg", limits.detection().deviation());
    out.put("mdl_mg", limits.detection().limit());
    out.put("critical_mg", limits.currie().critical());
    out.put("detection_mg", limits.currie().detection());
    out.put("determination_mg", limits.currie().determination());
    return out;
  }

  /** Samples and blanks by the day of their analysis. */
  public static List<Map<String, Object>> days(BatchReport report) {
    List<Map<String, Object>> out = new ArrayList<>();
    for (AnalyticalDays.Day day : report.days()) {
      Map<String, Object> fields = new LinkedHashMap<>();
      fields.put("day", day.day());
      fields.put("samples", day.samples());
      fields.put("blanks", day.blanks());
      fields.put("blanks_needed", day.needed());
      out.add(fields);
    }
    return out;
  }

  /** What is worth saying beside the flags. */
  public static List<String> sentences(BatchReport report) {
    List<String> out = new ArrayList<>();
    for (AnalyticalDays.Day day : report.days()) {
      if (day.isShort()) {
        out.add(
            (day.day().isEmpty() ? "" : day.day() + ": ")
                + day.blanks()
                + " of the "
                + day.needed()
                + " blanks that "
                + day.samples()
                + " samples need.");
      }
    }
    BlankLimits limits = BlankLimits.of(report);
    if (limits != null) {
      out.add(
          "Detection limit from "
              + limits.detection().n()
              + " blanks ("
              + limits.kind().word()
              + "): "
              + ForPeople.value(limits.detection().limit(), 2, 0)
              + " mg on a filter, over the volume the limit in mg/L.");
    }
    return out;
  }
}
