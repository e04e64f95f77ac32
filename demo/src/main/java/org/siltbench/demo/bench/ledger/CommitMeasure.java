package org.siltbench.demo.bench.ledger;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.json.Json;
import org.siltbench.station.ledger.Draft;

/** Turn by turn, on the same disk: one act of the bench, and the bare append of the same bytes. */
public final class CommitMeasure {

  private CommitMeasure() {}

  /** Runs it; {@code --count N}, {@code --dir DIR}. */
  public static String run(String[] args) throws IOException {
    int count = Bits.number(args, "--count", 2000);
    Path folder = Bits.folder(args);
    try (OpenLab lab = LabFolder.create(folder.resolve("lab"), "bench", false, Bits.setting(1));
        FileChannel bare =
            FileChannel.open(
                folder.resolve("bare"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      measure(lab, bare, 1000);
      return Json.write(measure(lab, bare, count));
    } finally {
      Bits.remove(folder);
    }
  }

  private static Map<String, Object> measure(OpenLab lab, FileChannel bare, int count)
      throws IOException {
    Random random = new Random(2);
    double[] acts = new double[count];
    double[] bares = new double[count];
    long bytes = 0;
    for (int i = 0; i < count; i++) {
      Draft draft = Bits.weighing("F" + i, "pre", random, 20);
      long start = System.nanoTime();
      long seq = lab.act(view -> List.of(draft)).get(0).ref().seq();
      acts[i] = (System.nanoTime() - start) / 1000.0;
      byte[] line =
          (lab.lines(lab.code(), seq - 1, 1).get(0) + '\n').getBytes(StandardCharsets.UTF_8);
      bytes += line.length;
      ByteBuffer buffer = ByteBuffer.wrap(line);
      start = System.nanoTime();
      bare.write(buffer, bare.size());
      bare.force(false);
      bares[i] = (System.nanoTime() - start) / 1000.0;
    }
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("measure", "commit");
    result.put("commits", (long) count);
    result.put("bytes_per_line", bytes / count);
    result.put("act_us", Bits.spread(acts));
    result.put("bare_us", Bits.spread(bares));
    result.put(
        "ratio_of_medians", Bits.rounded(Bits.quantile(acts, 0.5) / Bits.quantile(bares, 0.5)));
    result.put("goal", "1.2");
    result.put(
        "load", Bits.rounded(ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage()));
    return result;
  }
}
