package org.siltbench.station.command.drying;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.command.Session;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.CycleState;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.drying.DryEnd;
import org.siltbench.station.work.drying.DryStart;
import org.siltbench.station.work.drying.Load;

/** Drying cycles in words and as JSON. */
final class DryText {

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

  private final Session session;

  DryText(Session session) {
    this.session = session;
  }

  void started(DryStart.Started started) {
    Map<String, @Nullable Object> document = fields(started.cycle());
    document.put("earliest_out", Facts.time(started.earliestOut()));
    List<Map<String, Object>> loads = new ArrayList<>();
    started.loads().forEach(load -> loads.add(fields(load)));
    document.put("loads", loads);
    document.put("warnings", started.warnings().stream().map(Words::english).toList());
    document.put("ledger", ledger(started.entry()));
    session.document(document);
    session.fact(line(started.cycle()));
    session.fact("  not out before " + CLOCK.format(started.earliestOut()));
    started.loads().forEach(load -> session.fact(line(load)));
    started.warnings().forEach(warning -> session.message(warning.english()));
  }

  private static String line(Load load) {
    return "  load "
        + load.number()
        + ": "
        + load.filters().size()
        + " filters, out "
        + CLOCK.format(load.out())
        + ", weigh from "
        + CLOCK.format(load.cooledUntil())
        + " to "
        + CLOCK.format(load.usefulUntil());
  }

  private static Map<String, Object> fields(Load load) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("load", load.number());
    fields.put("filters", load.filters());
    fields.put("out", Facts.time(load.out()));
    fields.put("cooled_until", Facts.time(load.cooledUntil()));
    fields.put("useful_until", Facts.time(load.usefulUntil()));
    return fields;
  }

  void ended(DryEnd.Ended ended) {
    Map<String, @Nullable Object> document = new LinkedHashMap<>();
    document.put("cycle", ended.cycle());
    document.put("filters", ended.filters());
    document.put("out", Facts.time(ended.out()));
    document.put("cooled_until", Facts.time(ended.cooledUntil()));
    document.put("useful_until", Facts.time(ended.usefulUntil()));
    document.put("warnings", ended.warnings().stream().map(Words::english).toList());
    document.put("ledger", ledger(ended.entry()));
    session.document(document);
    session.fact(
        ended.cycle()
            + ": "
            + ended.filters().size()
            + " filters out, weigh from "
            + CLOCK.format(ended.cooledUntil())
            + " to "
            + CLOCK.format(ended.usefulUntil()));
    ended.warnings().forEach(warning -> session.message(warning.english()));
  }

  static Map<String, @Nullable Object> fields(CycleState cycle) {
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("cycle", cycle.id());
    fields.put("purpose", cycle.purpose());
    List<Map<String, String>> filters = new ArrayList<>();
    cycle
        .dishes()
        .forEach(
            (id, dish) -> {
              Map<String, String> row = new LinkedHashMap<>();
              row.put("filter", id);
              row.put("dish", dish);
              filters.add(row);
            });
    fields.put("filters", filters);
    fields.put("inside", List.copyOf(cycle.inside()));
    fields.put("in", Facts.time(cycle.in()));
    fields.put("out", time(cycle.out().orElse(null)));
    fields.put("cooled_until", time(cycle.cooledUntil().orElse(null)));
    fields.put("useful_until", time(cycle.usefulUntil().orElse(null)));
    return fields;
  }

  private static @Nullable String time(@Nullable OffsetDateTime time) {
    return time == null ? null : Facts.time(time);
  }

  static String line(CycleState cycle) {
    return cycle.id()
        + " ("
        + cycle.purpose()
        + "): "
        + cycle.dishes().size()
        + " filters, in "
        + CLOCK.format(cycle.in())
        + cycle.out().map(out -> ", out " + CLOCK.format(out)).orElse("");
  }

  private static Map<String, Object> ledger(Entry entry) {
    Map<String, Object> ledger = new LinkedHashMap<>();
    ledger.put("bench", entry.ref().bench());
    ledger.put("seq", entry.ref().seq());
    return ledger;
  }
}
