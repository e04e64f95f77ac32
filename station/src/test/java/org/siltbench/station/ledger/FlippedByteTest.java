package org.siltbench.station.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FlippedByteTest {

  private static final int ENTRIES = 12;

  @TempDir Path folder;

  private Path sample() throws IOException {
    Path path = folder.resolve("BT24.jsonl");
    try (LedgerFile file =
        new LedgerFile(
            new RealDisk(), path, false, Position.start("BT24"), Pen.ALONE, note -> {})) {
      for (int seq = 1; seq <= ENTRIES; seq += seq == 4 || seq == 9 ? 3 : 1) {
        file.append(act(seq, seq == 4 || seq == 9 ? 3 : 1));
      }
    }
    return path;
  }

  private static List<Entry> act(int first, int size) {
    List<Entry> act = new ArrayList<>();
    for (int seq = first; seq < first + size; seq++) {
      act.add(
          new Entry(
              LineText.VERSION,
              new EntryRef("BT24", seq),
              OffsetDateTime.parse("2026-03-02T08:00:00+01:00").plusMinutes(seq),
              new Hlc(1_772_434_800_000L + seq, 0),
              "AB",
              "weighing",
              1,
              true,
              Map.of("filter", "BT24-" + seq, "raw", "+ 0.12" + seq + " g µ\r\n")));
    }
    return act;
  }

  @Test
  void aFlippedByteAnywhereIsFoundAndLocatedAndTheRestStaysReadable() throws IOException {
    Path path = sample();
    byte[] good = Files.readAllBytes(path);
    Random random = new Random(3);
    for (int at = 0; at < good.length; at++) {
      byte[] bad = good.clone();
      bad[at] ^= (byte) (1 << random.nextInt(8));
      Files.write(path, bad);
      List<Long> readable = new ArrayList<>();
      VerifyLedger.Checked checked =
          VerifyLedger.file(
              new RealDisk(), path, "BT24", line -> readable.add(line.entry().ref().seq()));
      assertFalse(checked.problems().isEmpty(), "byte " + at);
      assertEquals(lineOf(good, at), checked.problems().get(0).line(), "byte " + at);
      assertTrue(readable.size() >= ENTRIES - 2, "byte " + at + ": " + readable);
    }
  }

  private static long lineOf(byte[] file, int at) {
    long line = 1;
    for (int i = 0; i < at; i++) {
      line += file[i] == '\n' ? 1 : 0;
    }
    return line;
  }

  @Test
  void aRewrittenLineWithAFreshHashIsFoundAtTheNextOne() throws IOException {
    Path path = sample();
    List<String> lines = new ArrayList<>(Files.readAllLines(path));
    Entry entry = LineText.entry(lines.get(1).getBytes("UTF-8"), 0);
    Entry forged = entry.with(Map.of("filter", "another"));
    lines.set(1, new String(LineText.write(forged, sum(lines.get(0))), "UTF-8"));
    Files.write(path, lines);
    VerifyLedger.Checked checked = VerifyLedger.file(new RealDisk(), path, "BT24", line -> {});
    assertEquals(1, checked.problems().size());
    assertEquals(3, checked.problems().get(0).line());
  }

  @Test
  void aLineTakenOutOrTwoExchangedAreFound() throws IOException {
    Path path = sample();
    List<String> lines = Files.readAllLines(path);
    List<String> without = new ArrayList<>(lines);
    without.remove(6);
    Files.write(path, without);
    assertEquals(
        7, VerifyLedger.file(new RealDisk(), path, "BT24", l -> {}).problems().get(0).line());
    List<String> exchanged = new ArrayList<>(lines);
    exchanged.set(2, lines.get(3));
    exchanged.set(3, lines.get(2));
    Files.write(path, exchanged);
    assertEquals(
        3, VerifyLedger.file(new RealDisk(), path, "BT24", l -> {}).problems().get(0).line());
  }

  private static String sum(String line) {
    return line.substring(line.length() - 66, line.length() - 2);
  }
}
