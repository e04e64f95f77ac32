package org.siltbench.station.command.weigh;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.command.Session;
import org.siltbench.station.work.postweigh.PostWeighReport;

/** What a post-weighing came to, in words and as JSON. */
final class PostWeighText {

  private final Session session;
  private final @Nullable String batch;

  PostWeighText(Session session, @Nullable String batch) {
    this.session = session;
    this.batch = batch;
  }

  void document(PostWeighReport report, List<String> unread) {
    Map<String, @Nullable Object> document = new LinkedHashMap<>();
    document.put("batch", batch);
    List<Map<String, @Nullable Object>> weighings = new ArrayList<>();
    report.weighings().forEach(done -> weighings.add(fields(done)));
    document.put("weighings", weighings);
    List<Map<String, String>> refused = new ArrayList<>();
    for (PostWeighReport.Refusal one : report.refused()) {
      Map<String, String> fields = new LinkedHashMap<>();
      fields.put("filter", one.filter());
      fields.put("why", one.why());
      refused.add(fields);
    }
    document.put("refused", refused);
    document.put("left", report.left());
    document.put("not_read", unread);
    if (!report.stopped().isEmpty()) {
      document.put("stopped", report.stopped());
    }
    session.document(document);
  }

  private static Map<String, @Nullable Object> fields(PostWeighReport.Done done) {
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("filter", done.filter());
    EventLines.putMass(fields, done.measured(), done.entry());
    ConstantVerdict verdict = done.verdict();
    fields.put("verdict", verdict.kind().word());
    fields.put("change_g", grams(verdict.change()));
    fields.put("limit_g", grams(verdict.limit()));
    fields.put("why", verdict.why());
    fields.put("decision", done.decision());
    return fields;
  }

  private static @Nullable String grams(@Nullable Mass mass) {
    return mass == null ? null : mass.toGrams();
  }

  /** Says how it ended and answers the exit status. */
  int close(PostWeighReport report, List<String> unread) {
    long again = count(report, ConstantVerdict.Kind.DRY_AGAIN);
    long constant = count(report, ConstantVerdict.Kind.CONSTANT);
    session.message(
        report.weighings().size()
            + " weighed: "
            + constant
            + " constant, "
            + again
            + " to dry again.");
    if (!report.stopped().isEmpty()) {
      session.message(report.stopped());
    }
    if (!unread.isEmpty()) {
      session.message("Not weighed: " + String.join(", ", unread));
    }
    if (!report.left().isEmpty()) {
      session.message("Of the batch not weighed now: " + String.join(", ", report.left()));
    }
    return report.refused().isEmpty() && report.stopped().isEmpty() ? 0 : 1;
  }

  private static long count(PostWeighReport report, ConstantVerdict.Kind kind) {
    return report.weighings().stream().filter(done -> done.verdict().kind() == kind).count();
  }
}
