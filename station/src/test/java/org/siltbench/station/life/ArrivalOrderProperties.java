package org.siltbench.station.life;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.ledger.Hlc;
import org.siltbench.station.register.Subject;

/** Entries of two benches, in any order of arrival, fold to the same rows. */
class ArrivalOrderProperties {

  private static final String[] KINDS = {
    "batch.created", "weighing", "weighing", "weighing", "batch.issued", "sample.received",
    "dry.started", "dry.ended", "hold", "bag.missing", "filter.rejected", "release"
  };

  @Property(tries = 200)
  void any_order_of_arrival_gives_the_same_rows(@ForAll long seed) {
    Random random = new Random(seed);
    List<Entry> entries = new ArrayList<>();
    for (int i = 1; i <= 30; i++) {
      entries.add(entry(random, i));
    }
    Map<Subject, Object> inOrder = arrived(entries);
    for (int shuffles = 0; shuffles < 5; shuffles++) {
      Collections.shuffle(entries, random);
      assertEquals(inOrder, arrived(entries));
    }
  }

  /** Folds again after every arrival, as the register does: only the subjects touched. */
  private static Map<Subject, Object> arrived(List<Entry> order) {
    LifeSubjects subjects = new LifeSubjects();
    Map<Subject, List<Entry>> histories = new HashMap<>();
    Map<Subject, Object> rows = new HashMap<>();
    for (Entry entry : order) {
      for (Subject subject : subjects.of(entry)) {
        List<Entry> history = histories.computeIfAbsent(subject, s -> new ArrayList<>());
        history.add(entry);
        history.sort(
            Comparator.comparing(Entry::hlc)
                .thenComparing(e -> e.ref().bench())
                .thenComparingLong(e -> e.ref().seq()));
        rows.put(subject, subjects.fold(subject, history));
      }
    }
    return rows;
  }

  private static Entry entry(Random random, int n) {
    String bench = random.nextBoolean() ? "AB12" : "CD34";
    String kind = n == 1 ? "batch.created" : KINDS[random.nextInt(KINDS.length)];
    OffsetDateTime at =
        OffsetDateTime.ofInstant(Instant.ofEpochSecond(random.nextInt(100_000)), ZoneOffset.UTC);
    return new Entry(
        1,
        new EntryRef(bench, n),
        at,
        new Hlc(random.nextInt(20), 0),
        "XY",
        kind,
        1,
        true,
        data(random, kind));
  }

  private static Map<String, Object> data(Random random, String kind) {
    String filter = "F" + random.nextInt(3);
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("filter", filter);
    data.put("batch", "B1");
    data.put("trip", "T1");
    data.put("cycle", "D" + random.nextInt(2));
    data.put("sample", "S" + random.nextInt(2));
    data.put("mass_g", "0.1" + random.nextInt(100));
    data.put("status", random.nextBoolean() ? "pre" : "post");
    data.put("verdict", random.nextBoolean() ? "constant" : "dry-again");
    boolean objects = Set.of("batch.created", "dry.started").contains(kind);
    data.put("filters", List.of(objects ? Map.of("filter", filter, "role", "sample") : filter));
    return data;
  }
}
