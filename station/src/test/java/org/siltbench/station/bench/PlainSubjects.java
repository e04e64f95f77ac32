package org.siltbench.station.bench;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.siltbench.station.json.Json;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.register.Amendment;
import org.siltbench.station.register.StateRow;
import org.siltbench.station.register.Subject;
import org.siltbench.station.register.Subjects;

/** As little as shows that the register folds: filters, batches, corrections. */
public final class PlainSubjects implements Subjects {

  @Override
  public int version() {
    return 1;
  }

  @Override
  public Set<Subject> of(Entry effective) {
    Set<Subject> subjects = new HashSet<>();
    if (effective.data().get("filter") instanceof String filter) {
      subjects.add(new Subject("filter", filter));
    }
    if (effective.data().get("batch") instanceof String batch) {
      subjects.add(new Subject("batch", batch));
    }
    return subjects;
  }

  @Override
  public Optional<StateRow> fold(Subject subject, List<Entry> history) {
    List<Object> seen = new ArrayList<>();
    String mass = "";
    for (Entry entry : history) {
      mass = String.valueOf(entry.data().getOrDefault("mass_g", mass));
      seen.add(entry.ref().toString());
    }
    Map<String, Object> summary = new LinkedHashMap<>();
    summary.put("mass_g", mass);
    summary.put("seen", seen);
    String status = "seen-" + history.size();
    return Optional.of(new StateRow(subject, "", status, Json.canonical(summary)));
  }

  @Override
  public List<Amendment> amendments(Entry entry) {
    if (!entry.kind().equals("corrected")) {
      return List.of();
    }
    EntryRef target = EntryRef.parse((String) entry.data().get("entry"));
    Map<String, Object> set = new LinkedHashMap<>();
    ((Map<?, ?>) entry.data().get("set")).forEach((name, value) -> set.put((String) name, value));
    return List.of(new Amendment(target, set));
  }
}
