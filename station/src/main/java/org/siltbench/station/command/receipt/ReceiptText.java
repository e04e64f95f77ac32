package org.siltbench.station.command.receipt;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.command.Session;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.SampleRecord;
import org.siltbench.station.work.exchange.Preview;
import org.siltbench.station.work.receipt.Reconciliation;

/** What came back, in words and as JSON. */
final class ReceiptText {

  private final Session session;
  private final boolean look;
  private final @Nullable Preview preview;

  ReceiptText(Session session, boolean look, @Nullable Preview preview) {
    this.preview = preview;
    this.session = session;
    this.look = look;
  }

  /** Tells it and answers the exit status. */
  int tell(Reconciliation.Done done) {
    session.document(document(done));
    done.written().forEach(this::written);
    Reconciliation found = done.found();
    list(found.already(), "Taken in before");
    list(found.unused(), "Nothing written beside them (unused?)");
    list(found.bagsWithoutNotes(), "Bags without notes");
    list(found.missing(), "Not back yet");
    found.warnings().forEach(warning -> session.message(warning.what().english()));
    for (Reconciliation.Refused no : found.refused()) {
      session.message("Line " + no.line() + ", " + no.filter() + ": " + no.why());
    }
    return close(done);
  }

  private void written(Entry entry) {
    Fields data = Fields.of(entry);
    switch (entry.kind()) {
      case "sample.received" ->
          session.fact(
              "received " + data.text("filter") + " sample " + data.text("sample") + volume(entry));
      case "hold" ->
          session.fact(
              "held " + String.join(", ", data.filters("filters")) + ": " + data.text("reason"));
      case "bag.missing" -> session.fact("missing " + data.text("filter"));
      default -> throw new IllegalStateException("a receipt does not write " + entry.kind());
    }
  }

  private static String volume(Entry entry) {
    return SampleRecord.of(entry.ref(), entry.data())
        .volume()
        .map(volume -> " " + volume)
        .orElse(" (no volume)");
  }

  private void list(List<String> ids, String title) {
    if (!ids.isEmpty()) {
      session.message(title + ": " + String.join(", ", ids));
    }
  }

  private int close(Reconciliation.Done done) {
    int refused = done.found().refused().size();
    if (refused == 0) {
      return 0;
    }
    session.message(
        look || !done.written().isEmpty()
            ? refused + " lines cannot be taken in; correct them and run it again."
            : refused
                + " lines cannot be taken in, so nothing was recorded. Correct them and run it"
                + " again, or take in the others with --go-on.");
    return 1;
  }

  private Map<String, @Nullable Object> document(Reconciliation.Done done) {
    Reconciliation found = done.found();
    Map<String, @Nullable Object> document = new LinkedHashMap<>();
    List<Map<String, @Nullable Object>> received = new ArrayList<>();
    for (Entry entry : done.written()) {
      if (entry.kind().equals("sample.received")) {
        received.add(received(entry));
      }
    }
    if (preview != null) {
      document.put("import", ImportText.document(preview));
    }
    document.put("received", received);
    document.put("already", found.already());
    List<Map<String, Object>> refused = new ArrayList<>();
    found.refused().forEach(no -> refused.add(refused(no)));
    document.put("refused", refused);
    document.put("unused", found.unused());
    document.put("bags_without_notes", found.bagsWithoutNotes());
    document.put("notes_without_bags", ids(found, Reconciliation.Kind.NOTES_WITHOUT_BAG));
    document.put("two_notes", ids(found, Reconciliation.Kind.TWO_NOTES));
    document.put("missing", found.missing());
    document.put(
        "warnings", found.warnings().stream().map(warning -> warning.what().english()).toList());
    return document;
  }

  private static List<String> ids(Reconciliation found, Reconciliation.Kind kind) {
    return found.refused().stream()
        .filter(no -> no.kind() == kind)
        .map(Reconciliation.Refused::filter)
        .distinct()
        .toList();
  }

  private static Map<String, @Nullable Object> received(Entry entry) {
    SampleRecord record = SampleRecord.of(entry.ref(), entry.data());
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("filter", record.filter());
    fields.put("sample", record.sample());
    fields.put("role", record.role());
    fields.put("volume_ml", record.volume().map(v -> v.toMillilitres()).orElse(null));
    fields.put("condition", record.text("condition"));
    Map<String, Object> ledger = new LinkedHashMap<>();
    ledger.put("bench", entry.ref().bench());
    ledger.put("seq", entry.ref().seq());
    fields.put("ledger", ledger);
    return fields;
  }

  private static Map<String, Object> refused(Reconciliation.Refused no) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("line", no.line());
    fields.put("filter", no.filter());
    fields.put("kind", no.kind().code());
    fields.put("why", no.why());
    return fields;
  }
}
