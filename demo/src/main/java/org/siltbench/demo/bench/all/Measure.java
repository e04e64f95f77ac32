package org.siltbench.demo.bench.all;

import java.util.List;

/**
 * One measure as it is run for the page.
 *
 * @param name as {@code demo/bench} takes it
 * @param shortly what it is told in the short run
 * @param atLength what it is told in the long one
 */
record Measure(String name, List<String> shortly, List<String> atLength) {

  static final List<Measure> ALL =
      List.of(
          new Measure("parse", List.of(), List.of()),
          new Measure("calc", List.of(), List.of()),
          new Measure("labels", List.of(), List.of()),
          new Measure("commit", List.of(), List.of("--count", "10000")),
          new Measure("open", List.of(), List.of("--full")),
          new Measure("start", List.of(), List.of()),
          new Measure("frames", List.of("--minutes", "2"), List.of()),
          new Measure(
              "faults",
              List.of(),
              List.of("--kills", "1000", "--faults", "100000", "--partitions", "500")),
          new Measure(
              "stability",
              List.of("--n", "8000", "--seed", "2026"),
              List.of("--n", "470000", "--seed", "1")));

  static final List<Claim> CLAIMS =
      List.of(
          Claim.of(
                  "parse",
                  "parse",
                  "Lines read, times as fast as a regular expression with exact decimals",
                  "times_faster",
                  "")
              .atLeast("10"),
          Claim.of("parse", "parse-rate", "Lines read a second", "ours/lines_per_s", "/s"),
          Claim.of("parse", "parse-reading", "Memory a reading", "ours_memory/reading", "B"),
          Claim.of(
              "parse",
              "parse-block",
              "Share of the block that keeps the bytes of its line",
              "ours_memory/share_of_block",
              "B"),
          Claim.of(
                  "parse",
                  "parse-beyond",
                  "Allocated a line besides these two",
                  "ours_memory/beyond",
                  "B")
              .atMost("0"),
          times(
                  "first_order_full_budget",
                  "calc-first",
                  "Result with its whole budget, first order, times a plain loop")
              .atMost("2"),
          times(
                  "by_distributions",
                  "calc-trials",
                  "Result by 100,000 drawn trials, times a plain loop")
              .atMost("2"),
          times("csv_rows", "calc-csv", "Table of 1,000,000 rows, times reading and writing it")
              .atMost("3"),
          Claim.of(
                  "labels",
                  "labels",
                  "1,000 labels, times drawing the same marks and nothing else",
                  "ratio",
                  "")
              .atMost("1.3"),
          Claim.of(
                  "commit",
                  "commit",
                  "Accepted mass to forced on disk, times a bare append and force, median",
                  "ratio_of_medians",
                  "")
              .atMost("1.2"),
          Claim.of("commit", "commit-us", "The same in time, median", "act_us/p50", "µs"),
          scan(0, "1,000"),
          scan(1, "100,000"),
          scan(2, "1,000,000"),
          opening(0, "1,000"),
          opening(1, "100,000"),
          opening(2, "1,000,000"),
          Claim.of(
              "open",
              "rebuild",
              "Entries a second when the register is made again, 100,000 weighings",
              "sizes/1/rebuild_entries_per_s",
              "/s"),
          Claim.of("start", "start", "Window with a live mass, times an empty window", "ratio", "")
              .atMost("1.5"),
          Claim.of("start", "start-ms", "The same in time, median", "window_ms/median", "ms"),
          Claim.of(
                  "frames",
                  "frames-late",
                  "Frames later than 100 ms while masses are recorded",
                  "later_than_100_ms",
                  "")
              .atMost("0"),
          Claim.of("frames", "frames-most", "Longest time between two frames", "most_ms", "ms"),
          Claim.of("frames", "frames-min", "Minutes it was watched", "minutes", "min"),
          Claim.of("faults", "kills", "Processes killed while writing", "kills/kills", "")
              .atLeast("1000"),
          Claim.of("faults", "faults", "Runs on a failing disk", "file_faults/runs", "")
              .atLeast("100000"),
          Claim.of("faults", "partitions", "Benches parted and healed", "partitions/schedules", "")
              .atLeast("500"),
          Claim.of(
                  "faults",
                  "lost",
                  "Masses lost after they were told",
                  "lost_acknowledged_masses",
                  "")
              .atMost("0"),
          stability("detectable", "placements", "Placements that can be told from rest", "")
              .atLeast("330000"),
          stability("wrong", "wrong", "Wrong masses among them", ""),
          stability("wrong_per_100k_high", "wrong-bound", "95 % bound in 100,000", "").atMost("1"),
          stability("ratio_median", "provisional", "Provisional mass, times the oracle, median", "")
              .atMost("1.3"),
          stability("excess_median", "recorded", "Recorded mass after the oracle, median", "s")
              .atMost("8"),
          stability("excess_p95", "recorded-95", "The same, 95th percentile", "s").atMost("15"),
          stability("refused_share", "refused", "Share refused", ""));

  private static Claim times(String figure, String key, String words) {
    return Claim.of("calc", key, words, figure + "/times_plain", "");
  }

  private static Claim scan(int place, String weighings) {
    return Claim.of(
            "open",
            "scan-" + place,
            "Answer to a scan with the history, " + weighings + " weighings, 99 in 100",
            "sizes/" + place + "/scan_history_ms/p99",
            "ms")
        .atMost("1");
  }

  private static Claim opening(int place, String weighings) {
    return Claim.of(
        "open",
        "open-" + place,
        "Opening a lab of " + weighings + " weighings, median",
        "sizes/" + place + "/open_ms/p50",
        "ms");
  }

  private static Claim stability(String figure, String key, String words, String unit) {
    return Claim.of("stability", key, words, "groups/all/siltbench/" + figure, unit);
  }
}
