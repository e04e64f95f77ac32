package org.siltbench.station.command.weigh;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.command.Session;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.preweigh.PreWeighReport;

/** What a pre-weighing came to, in words and as JSON. */
final class PreWeighText {

  private PreWeighText() {}

  static Map<String, @Nullable Object> document(BatchState batch, PreWeighReport report) {
    Map<String, @Nullable Object> document = new LinkedHashMap<>();
    document.put("batch", batch.name());
    document.put("weighings", done(report.weighings()));
    document.put("repeats", done(report.repeats()));
    List<Map<String, String>> refused = new ArrayList<>();
    for (PreWeighReport.Refusal one : report.refused()) {
      Map<String, String> fields = new LinkedHashMap<>();
      fields.put("filter", one.filter());
      fields.put("why", one.why());
      refused.add(fields);
    }
    document.put("refused", refused);
    document.put("left", report.left());
    if (!report.stopped().isEmpty()) {
      document.put("stopped", report.stopped());
    }
    return document;
  }

  private static List<Map<String, @Nullable Object>> done(List<PreWeighReport.Done> list) {
    List<Map<String, @Nullable Object>> out = new ArrayList<>();
    for (PreWeighReport.Done one : list) {
      Map<String, @Nullable Object> fields = new LinkedHashMap<>();
      fields.put("filter", one.filter());
      EventLines.putMass(fields, one.measured(), one.entry());
      out.add(fields);
    }
    return out;
  }

  /** Says how it ended and answers the exit status. */
  static int close(Session session, BatchState batch, PreWeighReport report) {
    if (!report.stopped().isEmpty()) {
      session.message(report.stopped());
      session.message("What was announced is recorded. Start again to go on.");
      return 1;
    }
    session.message(
        report.weighings().size()
            + " weighed; batch "
            + batch.name()
            + (report.left() == 0 ? " has no more to weigh." : " has " + report.left() + " left."));
    return 0;
  }
}
