package org.siltbench.demo.bench.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Reads the options of the measure, plays the placements, reports. */
public final class StabilityMeasure {

  private static final long SHORT = 20_000;

  private final List<Long> seeds;
  private final long n;
  private final int threads;
  private final boolean json;
  private final List<Baseline> baselines;

  private StabilityMeasure(List<String> args) {
    json = args.contains("--json");
    seeds = seeds(args);
    n = option(args, "--n", SHORT);
    threads = (int) option(args, "--threads", 1);
    baselines = baselines(args);
  }

  /** None with {@code --only ours}, else all. */
  private static List<Baseline> baselines(List<String> args) {
    int at = args.indexOf("--only");
    if (at < 0) {
      return List.of(Baseline.values());
    }
    if (at + 1 == args.size() || !args.get(at + 1).equals("ours")) {
      throw new IllegalArgumentException("--only takes one word: ours");
    }
    return List.of();
  }

  /** One seed, several with commas between, or a range with two dots. */
  private static List<Long> seeds(List<String> args) {
    int at = args.indexOf("--seed");
    List<Long> seeds = new ArrayList<>();
    for (String part : (at < 0 ? "1" : args.get(at + 1)).split(",", -1)) {
      String[] ends = part.split("\\.\\.", 2);
      long last = Long.parseLong(ends[ends.length - 1]);
      for (long seed = Long.parseLong(ends[0]); seed <= last; seed++) {
        seeds.add(seed);
      }
    }
    return seeds;
  }

  private static long option(List<String> args, String name, long otherwise) {
    int at = args.indexOf(name);
    return at < 0 ? otherwise : Long.parseLong(args.get(at + 1));
  }

  /**
   * Runs with {@code --seed}, {@code --n} placements of each seed, {@code --threads}, {@code
   * --json}; the figures of several seeds are sums. With {@code --only ours} the baselines are left
   * out: the figures of the detector are the same.
   */
  public static String run(String... args) throws InterruptedException, ExecutionException {
    return new StabilityMeasure(List.of(args)).report();
  }

  private String report() throws InterruptedException, ExecutionException {
    long begin = System.nanoTime();
    Run run = play();
    Report report = new Report(run, seeds, n, (System.nanoTime() - begin) / 1e9);
    return json ? report.json() : report.table() + "wrong: " + run.wrong();
  }

  private Run play() throws InterruptedException, ExecutionException {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Run>> parts = new ArrayList<>();
      for (long seed : seeds) {
        for (int i = 0; i < threads; i++) {
          long from = n * i / threads;
          long to = n * (i + 1) / threads;
          parts.add(pool.submit(() -> new Run(seed, baselines).play(from, to)));
        }
      }
      Run all = new Run(seeds.get(0), baselines);
      for (Future<Run> part : parts) {
        all.add(part.get());
      }
      return all;
    } finally {
      pool.shutdown();
    }
  }
}
