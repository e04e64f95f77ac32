package org.siltbench.demo.bench.ledger;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.json.Json;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.ledger.Hlc;
import org.siltbench.station.ledger.LineText;
import org.siltbench.station.ledger.Position;
import org.siltbench.station.register.Subject;

/** Ledgers of several sizes: rebuild, opening, opening beside another process, scans. */
public final class OpenMeasure {

  private static final int FILTERS_PER_BATCH = 100;

  private OpenMeasure() {}

  /** Runs it; {@code --full} adds a million weighings, {@code --dir DIR} names the disk. */
  public static String run(String[] args) throws IOException {
    List<Object> sizes = new ArrayList<>();
    warmUp(args);
    List<Integer> wanted = new ArrayList<>(List.of(1_000, 100_000));
    if (Arrays.asList(args).contains("--full")) {
      wanted.add(1_000_000);
    }
    for (int weighings : wanted) {
      Path folder = Bits.folder(args);
      try {
        sizes.add(measure(folder.resolve("lab"), weighings));
      } finally {
        Bits.remove(folder);
      }
    }
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("measure", "open");
    result.put("sizes", sizes);
    return Json.write(result);
  }

  /** Sizes are to be compared with each other, not with a program that has just started. */
  private static void warmUp(String[] args) throws IOException {
    Path folder = Bits.folder(args);
    try {
      measure(folder.resolve("lab"), 3_000);
    } finally {
      Bits.remove(folder);
    }
  }

  private static Map<String, Object> measure(Path lab, int weighings) throws IOException {
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("weighings", (long) weighings);
    fill(lab, weighings);
    long start = System.nanoTime();
    try (OpenLab open = LabFolder.open(lab, Bits.setting(2))) {
      double seconds = (System.nanoTime() - start) / 1e9;
      long entries = reached(open).seq();
      result.put("entries", entries);
      result.put("rebuild_s", Bits.rounded(seconds));
      result.put("rebuild_entries_per_s", Math.round(entries / seconds));
    }
    result.put("open_ms", Bits.spread(openings(lab, 7)));
    try (OpenLab open = LabFolder.open(lab, Bits.setting(3))) {
      result.put("open_beside_another_ms", Bits.spread(openings(lab, 3)));
      result.put("first_scan_ms", Bits.rounded(scan(open, "F" + weighings / 3, true)));
      result.put("scan_state_ms", Bits.spread(scans(open, weighings, false)));
      result.put("scan_history_ms", Bits.spread(scans(open, weighings, true)));
    }
    result.put("ledger_bytes", size(lab.resolve("ledger")));
    result.put("register_bytes", size(lab.resolve("register")));
    return result;
  }

  private static Position reached(OpenLab open) {
    return open.ledgers().getOrDefault(open.code(), Position.start(open.code()));
  }

  private static double[] openings(Path lab, int count) {
    double[] times = new double[count];
    for (int i = 0; i < count; i++) {
      long start = System.nanoTime();
      try (OpenLab open = LabFolder.open(lab, Bits.setting(4))) {
        times[i] = (System.nanoTime() - start) / 1e6;
        open.code();
      }
    }
    return times;
  }

  private static double[] scans(OpenLab open, int weighings, boolean history) {
    Random random = new Random(5);
    double[] times = new double[20_000];
    for (int i = -2_000; i < times.length; i++) {
      double took = scan(open, "F" + random.nextInt(weighings / 2), history);
      if (i >= 0) {
        times[i] = took;
      }
    }
    return times;
  }

  private static double scan(OpenLab open, String id, boolean history) {
    Subject filter = new Subject("filter", id);
    long start = System.nanoTime();
    int found =
        history
            ? open.register().history(filter).size()
            : open.register().state(filter).isPresent() ? 1 : 0;
    double took = (System.nanoTime() - start) / 1e6;
    if (found == 0) {
      throw new IllegalStateException("the register does not know " + filter);
    }
    return took;
  }

  private static long size(Path folder) throws IOException {
    long size = 0;
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        size += Files.size(file);
      }
    }
    return size;
  }

  /** A practice lab with so many weighings and its register, for other measures. */
  public static void lab(Path lab, int weighings) throws IOException {
    fill(lab, weighings, true, 1, "");
    LabFolder.open(lab, Bits.setting(2)).close(); // years are folded here, not at the first start
  }

  /** Takes a folder away. */
  public static void remove(Path folder) throws IOException {
    Bits.remove(folder);
  }

  private static void fill(Path lab, int weighings) throws IOException {
    fill(lab, weighings, false, 1, "");
  }

  /** One of several benches, whose filters and batches begin with a prefix. */
  static void fill(Path lab, int weighings, int seed, String prefix) throws IOException {
    fill(lab, weighings, false, seed, prefix);
  }

  /** Writes a long ledger without forcing each line, as if years had passed. */
  private static void fill(Path lab, int weighings, boolean practice, int seed, String prefix)
      throws IOException {
    Position position;
    String code;
    try (OpenLab open = LabFolder.create(lab, "bench", practice, Bits.setting(seed))) {
      code = open.code();
      position = reached(open);
    }
    Bits.remove(lab.resolve("register"));
    Files.createDirectory(lab.resolve("register"));
    Path file = lab.resolve("ledger").resolve(code + ".jsonl");
    try (OutputStream out =
        new BufferedOutputStream(Files.newOutputStream(file, StandardOpenOption.APPEND), 1 << 20)) {
      Filling filling = new Filling(out, position, code, prefix);
      filling.write(weighings);
    }
  }

  static final class Filling {
    private final OutputStream out;
    private final String code;
    private final String prefix;
    private final Random random = new Random(7);
    private final OffsetDateTime start = OffsetDateTime.parse("2020-01-02T08:00:00+01:00");
    private String prev;
    private long seq;
    private final long millis;

    Filling(OutputStream out, Position position, String code, String prefix) {
      this.out = out;
      this.code = code;
      this.prefix = prefix;
      this.prev = position.sum();
      this.seq = position.seq();
      this.millis = position.hlc().millis();
    }

    void write(int weighings) throws IOException {
      for (int filter = 0; filter < weighings / 2; filter++) {
        if (filter % FILTERS_PER_BATCH == 0) {
          line(batch(filter));
        }
        line(Bits.weighing(prefix + "F" + filter, "pre", random, 10));
        line(Bits.weighing(prefix + "F" + filter, "post", random, 10));
      }
    }

    private Draft batch(int first) {
      List<Object> filters = new ArrayList<>();
      for (int i = first; i < first + FILTERS_PER_BATCH; i++) {
        filters.add(Map.of("filter", prefix + "F" + i, "role", "sample"));
      }
      String name = prefix + "B" + first / FILTERS_PER_BATCH;
      return new Draft(
          "batch.created",
          1,
          true,
          Map.of("batch", name, "name", name, "lot", "L", "method", "M", "filters", filters));
    }

    private void line(Draft draft) throws IOException {
      seq++;
      byte[] line =
          LineText.write(
              new Entry(
                  LineText.VERSION,
                  new EntryRef(code, seq),
                  start.plusSeconds(seq),
                  new Hlc(millis + seq, 0),
                  "AB",
                  draft.kind(),
                  draft.kv(),
                  draft.must(),
                  draft.data()),
              prev);
      prev = LineText.sumOf(line);
      out.write(line);
      out.write('\n');
    }
  }
}
