package org.siltbench.station.life;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.register.Amendment;
import org.siltbench.station.register.StateRow;
import org.siltbench.station.register.Subject;
import org.siltbench.station.register.Subjects;

/** What each kind of entry is about, and how each subject's history folds into its row. */
public final class LifeSubjects implements Subjects {

  @Override
  public int version() {
    return 2;
  }

  @Override
  public Set<Subject> of(Entry effective) {
    Fields data = Fields.of(effective);
    Set<Subject> out = new LinkedHashSet<>();
    switch (effective.kind()) {
      case "bench.created", "day.closed" -> out.add(About.bench(effective.ref().bench()));
      case "room.noted" -> out.add(About.room(effective.ref().bench()));
      case "method.adopted" -> named(out, data, "key", About.METHOD);
      case "weight.described" -> named(out, data, "weight", About.WEIGHT);
      case "balance.described", "check.weighed", "check.overridden" ->
          named(out, data, "balance", About.BALANCE);
      case "lot.created", "lot.tested" -> named(out, data, "lot", About.LOT);
      case "weighing", "label.printed", "bag.closed", "filter.rejected" ->
          named(out, data, "filter", About.FILTER);
      case "bag.missing", "sample.received" -> fieldwork(out, data);
      case "custody" -> named(out, data, "trip", About.TRIP);
      default -> groups(effective.kind(), out, data);
    }
    return out;
  }

  private static void fieldwork(Set<Subject> out, Fields data) {
    named(out, data, "filter", About.FILTER);
    named(out, data, "sample", About.SAMPLE);
    named(out, data, "trip", About.TRIP);
  }

  private static void groups(String kind, Set<Subject> out, Fields data) {
    switch (kind) {
      case "batch.created", "batch.issued", "batch.returned", "hold", "release" -> {
        named(out, data, "batch", About.BATCH);
        named(out, data, "trip", About.TRIP);
        filters(out, data);
      }
      case "dry.started", "dry.ended" -> {
        named(out, data, "cycle", About.CYCLE);
        filters(out, data);
      }
      case "swapped" -> filters(out, data);
      default -> {
        // corrections are about what they amend, which the register knows; other kinds are not ours
      }
    }
  }

  private static void named(Set<Subject> out, Fields data, String field, String type) {
    data.find(field).ifPresent(id -> out.add(new Subject(type, id)));
  }

  private static void filters(Set<Subject> out, Fields data) {
    data.filters("filters").forEach(id -> out.add(About.filter(id)));
  }

  @Override
  public Optional<StateRow> fold(Subject subject, List<Entry> history) {
    return Rows.fold(subject, history);
  }

  @Override
  public List<Amendment> amendments(Entry entry) {
    Fields data = Fields.of(entry);
    return switch (entry.kind()) {
      case "corrected" -> correction(data);
      case "swapped" -> swap(data);
      default -> List.of();
    };
  }

  private static List<Amendment> correction(Fields data) {
    Optional<Fields> target = data.object("entry");
    Optional<Fields> set = data.object("set");
    if (target.isEmpty() || set.isEmpty()) {
      return List.of();
    }
    return List.of(new Amendment(ref(target.get()), set.get().all()));
  }

  private static List<Amendment> swap(Fields data) {
    List<Amendment> out = new ArrayList<>();
    for (Fields row : data.rows("set")) {
      Map<String, @Nullable Object> set = new LinkedHashMap<>(row.all());
      set.remove("bench");
      set.remove("seq");
      out.add(new Amendment(ref(row), set));
    }
    return out;
  }

  private static EntryRef ref(Fields named) {
    return new EntryRef(named.text("bench"), Long.parseLong(named.text("seq")));
  }
}
