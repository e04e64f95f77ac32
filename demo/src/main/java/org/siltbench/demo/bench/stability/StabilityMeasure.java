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

  private final long seed;
  private final long n;
  private final int threads;
  private final boolean json;

  private StabilityMeasure(List<String> args) {
    json = args.contains("--json");
    seed = option(args, "--seed", 1);
    n = option(args, "--n", SHORT);
    threads = (int) option(args, "--threads", 1);
  }

  private static long option(List<String> args, String name, long otherwise) {
    int at = args.indexOf(name);
    return at < 0 ? otherwise : Long.parseLong(args.get(at + 1));
  }

  /** Runs with {@code --seed}, {@code --n}, {@code --threads}, {@code --json}. */
  public static String run(String... args) throws InterruptedException, ExecutionException {
    return new StabilityMeasure(List.of(args)).report();
  }

  private String report() throws InterruptedException, ExecutionException {
    long begin = System.nanoTime();
    Run run = play();
    Report report = new Report(run, seed, n, (System.nanoTime() - begin) / 1e9);
    return json ? report.json() : report.table() + "wrong: " + run.wrong();
  }

  private Run play() throws InterruptedException, ExecutionException {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Run>> parts = new ArrayList<>();
      for (int i = 0; i < threads; i++) {
        long from = n * i / threads;
        long to = n * (i + 1) / threads;
        parts.add(pool.submit(() -> new Run(seed).play(from, to)));
      }
      Run all = new Run(seed);
      for (Future<Run> part : parts) {
        all.add(part.get());
      }
      return all;
    } finally {
      pool.shutdown();
    }
  }
}
