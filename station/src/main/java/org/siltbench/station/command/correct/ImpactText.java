package org.siltbench.station.command.correct;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.station.command.Session;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.work.results.Impact;

/** What was written and which results change, in words and as JSON. */
final class ImpactText {

  private final Session session;

  ImpactText(Session session) {
    this.session = session;
  }

  void tell(Impact.Outcome outcome) {
    Map<String, Object> document = new LinkedHashMap<>();
    List<Map<String, Object>> written = new ArrayList<>();
    for (Entry entry : outcome.written()) {
      Map<String, Object> fields = new LinkedHashMap<>();
      fields.put("kind", entry.kind());
      fields.put("bench", entry.ref().bench());
      fields.put("seq", entry.ref().seq());
      written.add(fields);
      session.fact(entry.kind() + " " + entry.ref());
    }
    document.put("written", written);
    document.put("changes", changes(outcome.changes()));
    session.document(document);
  }

  private List<Map<String, Object>> changes(List<Impact.Change> changes) {
    List<Map<String, Object>> out = new ArrayList<>();
    for (Impact.Change change : changes) {
      Map<String, Object> fields = new LinkedHashMap<>();
      fields.put("filter", change.filter());
      fields.put("sample", change.sample());
      fields.put("before", change.before().english());
      fields.put("after", change.after().english());
      fields.put("report", change.report());
      out.add(fields);
      session.fact(
          "  "
              + change.filter()
              + (change.sample().isEmpty() ? "" : " (" + change.sample() + ")")
              + ": "
              + change.before().english()
              + " -> "
              + change.after().english());
      if (!change.report().isEmpty()) {
        session.message(
            "Report "
                + change.report()
                + " gave the result of "
                + change.filter()
                + " as it was: release an amended report.");
      }
    }
    if (changes.isEmpty()) {
      session.message("No result changes.");
    }
    return out;
  }
}
