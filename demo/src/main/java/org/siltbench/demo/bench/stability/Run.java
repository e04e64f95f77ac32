package org.siltbench.demo.bench.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Plays a range of placements to all watchers and tallies what they make of them. */
final class Run {

  private static final int MOST_LISTED = 200;
  static final int FAST = 5;

  private final long seed;
  private final List<Watcher> watchers = new ArrayList<>();
  private final Map<String, Map<String, Tally>> tallies = new TreeMap<>();
  private final List<String> wrong = new ArrayList<>();

  /** A run of the detector against every baseline. */
  Run(long seed) {
    this(seed, List.of(Baseline.values()));
  }

  /** A run of the detector against some baselines, or alone. */
  Run(long seed, List<Baseline> baselines) {
    this.seed = seed;
    watchers.add(new OurPan());
    watchers.addAll(baselines);
  }

  /** Plays placements from (included) to (not included). */
  Run play(long from, long to) {
    for (long i = from; i < to; i++) {
      Stream stream = Simulator.play(Draw.of(seed, i));
      for (Watcher watcher : watchers) {
        Outcome outcome = watcher.watch(stream);
        add(stream, watcher, outcome);
        boolean ours = watcher == watchers.get(0);
        boolean bad = outcome.isRecorded() && stream.wrong(outcome.recorded());
        if (ours && bad && !stream.undetectable() && wrong.size() < MOST_LISTED) {
          wrong.add(seed + "/" + i);
        }
      }
    }
    return this;
  }

  private void add(Stream stream, Watcher watcher, Outcome outcome) {
    int rate = stream.placement().output().rate();
    boolean fast = rate >= FAST;
    tally("rate " + rate, watcher).add(stream, outcome);
    tally(fast ? "all" : "slow", watcher).add(stream, outcome);
    if (fast) {
      String kind = stream.placement().kind().name();
      tally("case " + kind.toLowerCase(java.util.Locale.ROOT), watcher).add(stream, outcome);
    }
  }

  private Tally tally(String group, Watcher watcher) {
    return tallies
        .computeIfAbsent(group, g -> new TreeMap<>())
        .computeIfAbsent(watcher.toString(), w -> new Tally());
  }

  Run add(Run other) {
    other.tallies.forEach(
        (group, byWatcher) ->
            byWatcher.forEach(
                (watcher, tally) ->
                    tallies
                        .computeIfAbsent(group, g -> new TreeMap<>())
                        .computeIfAbsent(watcher, w -> new Tally())
                        .add(tally)));
    wrong.addAll(other.wrong);
    return this;
  }

  /** By group ("all", "slow", "case …", "rate …"), then by watcher. */
  Map<String, Map<String, Tally>> tallies() {
    return tallies;
  }

  /** The detectable placements that our detector got wrong: seed and number. */
  List<String> wrong() {
    return wrong;
  }
}
