package org.siltbench.demo.bench.labels;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.siltbench.calc.id.BagCode;
import org.siltbench.calc.id.BatchCode;
import org.siltbench.calc.id.BenchCode;
import org.siltbench.calc.id.FilterId;
import org.siltbench.labels.Imprint;
import org.siltbench.labels.Papers;
import org.siltbench.labels.label.BagLabel;
import org.siltbench.labels.label.LabelRun;
import org.siltbench.labels.media.MediaCatalog;

/** Times both ways of drawing in turn, in one process, and compares their medians. */
public final class LabelsMeasure {

  private static final int LABELS = 1000;
  private static final int WARM_UP = 8;
  private static final int ROUNDS = 15;
  private static final double GOAL = 1.3;

  private LabelsMeasure() {}

  /** Measures and tells the result as one JSON document. */
  public static String run() throws IOException {
    LabelRun run = LabelRun.of(labels(), MediaCatalog.find("roll-50x30"));
    byte[] ours = ours(run);
    Recorded recorded = Recorded.of(ours);
    byte[] plain = PlainDrawing.of(recorded);
    for (int i = 0; i < WARM_UP; i++) {
      ours(run);
      PlainDrawing.of(recorded);
    }
    double[] oursMs = new double[ROUNDS];
    double[] plainMs = new double[ROUNDS];
    for (int i = 0; i < ROUNDS; i++) {
      oursMs[i] = time(() -> ours(run));
      plainMs[i] = time(() -> PlainDrawing.of(recorded));
    }
    return json(median(oursMs), median(plainMs), ours.length, plain.length);
  }

  private static String json(double ours, double plain, int ourBytes, int plainBytes) {
    return String.format(
        Locale.ROOT,
        "{\"bench\":\"labels\",\"labels\":%d,\"rounds\":%d,\"ours_ms\":%.1f,\"plain_ms\":%.1f,"
            + "\"ratio\":%.3f,\"goal\":%.1f,\"met\":%b,\"ours_bytes\":%d,\"plain_bytes\":%d}",
        LABELS,
        ROUNDS,
        ours,
        plain,
        ours / plain,
        GOAL,
        ours / plain <= GOAL,
        ourBytes,
        plainBytes);
  }

  private interface Work {
    byte[] done() throws IOException;
  }

  private static double time(Work work) throws IOException {
    long start = System.nanoTime();
    byte[] out = work.done();
    long end = System.nanoTime();
    if (out.length == 0) {
      throw new IOException("nothing was drawn");
    }
    return (end - start) / 1e6;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static byte[] ours(LabelRun run) throws IOException {
    OffsetDateTime made = OffsetDateTime.parse("2026-03-14T16:20:00+01:00");
    Imprint imprint = new Imprint("Alder Fork", "K3DF", null, 0, made, false, Imprint.PageSize.A4);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Papers.labels(run, imprint, out);
    return out.toByteArray();
  }

  private static List<BagLabel> labels() {
    List<FilterId> ids = new ArrayList<>(BatchCode.of(new BenchCode("K3DF"), 7).filters(500));
    ids.addAll(BatchCode.of(new BenchCode("K3DF"), 8).filters(LABELS - ids.size()));
    List<BagLabel> out = new ArrayList<>();
    for (int i = 0; i < LABELS; i++) {
      String grams = String.format(Locale.ROOT, "0.%05d", 12_000 + (i * 7919) % 1500);
      FilterId id = ids.get(i);
      String role = i % 20 == 9 ? "field-blank" : "sample";
      String code = new BagCode(id, grams, 1).text();
      out.add(new BagLabel(code, id.text(), grams + " g", 1, role, false, "Alder Fork", false));
    }
    return out;
  }
}
