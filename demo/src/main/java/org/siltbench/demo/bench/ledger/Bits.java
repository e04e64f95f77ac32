package org.siltbench.demo.bench.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.life.LifeSubjects;

/** Folders, settings, entries and statistics for the measures. */
final class Bits {

  private Bits() {}

  static Setting setting(long seed) {
    return new Setting("AB", Clock.systemUTC(), new Random(seed), new LifeSubjects(), note -> {});
  }

  /** A number after a word among the arguments. */
  static int number(String[] args, String word, int otherwise) {
    int at = Arrays.asList(args).indexOf(word);
    return at < 0 || at + 1 >= args.length ? otherwise : Integer.parseInt(args[at + 1]);
  }

  /** A fresh folder, in {@code --dir} or where the system keeps temporary files. */
  static Path folder(String[] args) throws IOException {
    int at = Arrays.asList(args).indexOf("--dir");
    return at < 0 || at + 1 >= args.length
        ? Files.createTempDirectory("siltbench-measure")
        : Files.createTempDirectory(Path.of(args[at + 1]), "siltbench-measure");
  }

  static void remove(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }

  /** A weighing as the bench records it, with some raw lines. */
  static Draft weighing(String filter, String status, Random random, int rawLines) {
    Map<String, @Nullable Object> data = new LinkedHashMap<>();
    data.put("filter", filter);
    data.put("status", status);
    data.put("round", 1L);
    data.put("mass_g", "0.1" + (1000 + random.nextInt(9000)));
    data.put("unit", "g");
    data.put("u_g", "0.00005");
    data.put("resolution_g", "0.0001");
    data.put("balance", "bench balance");
    data.put("purpose", "result");
    data.put("observed", true);
    data.put("raw", "200 S +    0.1234 g\n".repeat(rawLines));
    return new Draft("weighing", 1, true, data);
  }

  static double quantile(double[] values, double p) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.min(sorted.length - 1, Math.floor(p * sorted.length))];
  }

  static String rounded(double value) {
    return String.format(java.util.Locale.ROOT, "%.3f", value);
  }

  /** Quantiles as text, in the unit of the values. */
  static Map<String, Object> spread(double[] values) {
    Map<String, Object> spread = new LinkedHashMap<>();
    for (double p : List.of(0.1, 0.5, 0.95, 0.99)) {
      spread.put("p" + Math.round(p * 100), rounded(quantile(values, p)));
    }
    return spread;
  }
}
