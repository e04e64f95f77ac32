package org.siltbench.station.ledger;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ledger files from anywhere: read what is whole, say what is not, never fail otherwise. */
class LedgerFuzzTest {

  @TempDir Path folder;

  @Test
  void anyFileIsReadOrItsDamageIsSaid() throws IOException {
    fuzz(1_500, 1);
  }

  @Test
  @Tag("long")
  void manyFilesAreReadOrTheirDamageIsSaid() throws IOException {
    fuzz(100_000, 2);
  }

  private void fuzz(int count, long seed) throws IOException {
    Random random = new Random(seed);
    Path path = folder.resolve("BT24.jsonl");
    int damaged = 0;
    int whole = 0;
    for (int i = 0; i < count; i++) {
      Files.write(path, file(random));
      VerifyLedger.Checked checked = VerifyLedger.file(new RealDisk(), path, "BT24", line -> {});
      damaged += checked.problems().isEmpty() ? 0 : 1;
      whole += checked.entries() > 0 ? 1 : 0;
      try (LedgerFile file =
          new LedgerFile(
              new RealDisk(),
              path,
              random.nextBoolean(),
              Position.start("BT24"),
              Pen.ALONE,
              note -> {})) {
        file.readOn(1000);
      }
    }
    assertTrue(damaged > count / 5, "damaged: " + damaged);
    assertTrue(whole > count / 3, "whole: " + whole);
  }

  private static byte[] file(Random random) throws IOException {
    StringBuilder text = new StringBuilder();
    String prev = LineText.NO_HASH;
    int lines = random.nextInt(6);
    for (int seq = 1; seq <= lines; seq++) {
      byte[] line = LineText.write(entry(random, seq), prev);
      prev = LineText.sumOf(line);
      text.append(new String(line, StandardCharsets.UTF_8)).append('\n');
    }
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    for (int n = random.nextInt(3); n > 0 && bytes.length > 0; n--) {
      bytes = changed(bytes, random);
    }
    return bytes;
  }

  private static Entry entry(Random random, int seq) {
    Map<String, Object> data = new LinkedHashMap<>();
    for (int n = random.nextInt(3); n > 0; n--) {
      byte[] noise = new byte[random.nextInt(40)];
      random.nextBytes(noise);
      data.put("f" + n, new String(noise, StandardCharsets.ISO_8859_1));
    }
    return new Entry(
        LineText.VERSION,
        new EntryRef("BT24", random.nextInt(20) == 0 ? seq + 3 : seq),
        OffsetDateTime.parse("2026-03-02T08:00:00+01:00"),
        new Hlc(random.nextInt(20) == 0 ? 5 : 1_700_000_000_000L + seq, 0),
        "AB",
        "weighing",
        1,
        true,
        data);
  }

  private static byte[] changed(byte[] bytes, Random random) {
    int at = random.nextInt(bytes.length);
    int length = Math.min(random.nextInt(30), bytes.length - at);
    byte[] changed = bytes.clone();
    switch (random.nextInt(5)) {
      case 0 -> changed[at] ^= (byte) (1 << random.nextInt(8));
      case 1 -> changed = Arrays.copyOf(bytes, at);
      case 2 -> Arrays.fill(changed, at, at + length, (byte) 0);
      case 3 -> changed = Arrays.copyOf(bytes, bytes.length + random.nextInt(2000));
      default -> {
        byte[] noise = new byte[length];
        random.nextBytes(noise);
        System.arraycopy(noise, 0, changed, at, length);
      }
    }
    return changed;
  }
}
