package org.siltbench.station.command.prepare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Weighed;

/** A batch in words and as JSON. */
final class BatchText {

  private BatchText() {}

  static Map<String, Object> document(Bench bench, BatchState batch) {
    List<Map<String, Object>> filters = new ArrayList<>();
    for (FilterState filter : Filters.ofBatch(bench.register(), batch.code())) {
      Map<String, Object> fields = new LinkedHashMap<>();
      fields.put("filter", filter.id());
      fields.put("role", filter.role().code());
      if (filter.duplicate()) {
        fields.put("duplicate", true);
      }
      fields.put("status", filter.status().code());
      filter.preMass().map(Weighed::digits).ifPresent(grams -> fields.put("pre_g", grams));
      if (!filter.trip().isEmpty()) {
        fields.put("trip", filter.trip());
      }
      filters.add(fields);
    }
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("batch", batch.name());
    document.put("code", batch.code());
    document.put("lot", batch.lot());
    document.put("method", batch.method());
    document.put("filters", filters);
    return document;
  }

  static void print(Session session, Bench bench, BatchState batch) {
    session.fact(
        batch.name() + "  " + batch.code() + "  lot " + batch.lot() + "  " + batch.method());
    for (FilterState filter : Filters.ofBatch(bench.register(), batch.code())) {
      session.fact(
          "  "
              + filter.id()
              + "  "
              + filter.role().code()
              + (filter.duplicate() ? ", duplicate  " : "  ")
              + filter.status().code()
              + filter.preMass().map(mass -> "  " + mass.digits() + " g").orElse(""));
    }
  }
}
