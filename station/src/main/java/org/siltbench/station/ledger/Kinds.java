package org.siltbench.station.ledger;

import static java.util.Map.entry;

import java.util.Map;
import java.util.TreeMap;

/** The kinds of entries this version knows, with the newest version of each. */
public final class Kinds {

  private static final Map<String, Integer> NEWEST =
      Map.ofEntries(
          entry("bench.created", 1),
          entry("method.adopted", 1),
          entry("balance.described", 1),
          entry("weight.described", 1),
          entry("room.noted", 1),
          entry("check.weighed", 1),
          entry("check.overridden", 1),
          entry("lot.created", 1),
          entry("lot.tested", 1),
          entry("batch.created", 1),
          entry("weighing", 1),
          entry("label.printed", 1),
          entry("bag.closed", 1),
          entry("batch.issued", 1),
          entry("batch.returned", 1),
          entry("custody", 1),
          entry("sample.received", 1),
          entry("bag.missing", 1),
          entry("dry.started", 1),
          entry("dry.ended", 1),
          entry("hold", 1),
          entry("release", 1),
          entry("filter.rejected", 1),
          entry("corrected", 1),
          entry("swapped", 1),
          entry("day.closed", 1));

  private Kinds() {}

  /** True if this version can write and fully understand the kind in that version. */
  public static boolean known(String kind, int kv) {
    return kv >= 1 && kv <= NEWEST.getOrDefault(kind, 0);
  }

  /** All kinds and versions in one word: what was refused before may be known after a change. */
  public static String edition() {
    return new TreeMap<>(NEWEST).toString();
  }

  /** True if an entry must be understood before anything may be written after it. */
  public static boolean stopsWriting(Entry entry) {
    return entry.must() && !known(entry.kind(), entry.kv());
  }
}
