package org.siltbench.station.work.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.labels.log.Entered;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.LifeSubjects;
import org.siltbench.station.register.Amendment;
import org.siltbench.station.register.RegisterView;

/** What an entry said at first, and what was set in it afterwards. */
final class Amendments {

  private final Entry written;
  private final Entry effective;
  private final List<Map<String, @Nullable Object>> sets;

  Amendments(RegisterView register, Entry effective) {
    this.effective = effective;
    this.written = register.asWritten(effective.ref()).orElse(effective);
    this.sets =
        register.amendmentsOf(effective.ref()).stream()
            .flatMap(entry -> setsOf(entry, effective.ref()).stream())
            .toList();
  }

  private static List<Map<String, @Nullable Object>> setsOf(Entry amending, EntryRef target) {
    return new LifeSubjects()
        .amendments(amending).stream()
            .filter(amendment -> amendment.target().equals(target))
            .map(Amendment::set)
            .toList();
  }

  /** The value in force with those it replaced, oldest first. */
  Entered entered(String field, String unit) {
    String now = Fields.of(effective).text(field);
    List<String> struck = new ArrayList<>();
    String last = Fields.of(written).text(field);
    for (Map<String, @Nullable Object> set : sets) {
      if (set.containsKey(field)) {
        struck.add(last + unit);
        last = Fields.of(set).text(field);
      }
    }
    return new Entered(now + unit, struck);
  }

  /** What an amending entry sets, with what stood there at first. */
  static String inWords(RegisterView register, EntryRef target, Entry amending) {
    Fields first = register.asWritten(target).map(Fields::of).orElse(Fields.of(Map.of()));
    List<String> words = new ArrayList<>();
    for (Map<String, @Nullable Object> set : setsOf(amending, target)) {
      for (String field : set.keySet()) {
        String to = Fields.of(set).text(field);
        words.add(
            to.isEmpty() && set.get(field) != null
                ? field
                : field + ": " + shown(first.text(field)) + " -> " + shown(to));
      }
    }
    return String.join("; ", words);
  }

  private static String shown(String value) {
    return value.isEmpty() ? "(nothing)" : value;
  }
}
