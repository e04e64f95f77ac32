package org.siltbench.station.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.siltbench.station.fault.FaultyDisk;

/** An act of three lines is kept whole or not at all, wherever the power went. */
class HalfActTest {

  private static final Path PATH = Path.of("ledger", "BT24.jsonl");

  private FaultyDisk disk = new FaultyDisk(new Random(1));
  private byte[] whole;
  private int act;

  @BeforeEach
  void oneLineAndAnActOfThree() throws IOException {
    try (LedgerFile file = open()) {
      file.append(entries(1, 1));
      act = (int) file.position().end();
      file.append(entries(2, 3));
    }
    whole = bytes();
  }

  private LedgerFile open() throws IOException {
    return new LedgerFile(disk, PATH, false, Position.start("BT24"), Pen.ALONE, note -> {});
  }

  private byte[] bytes() throws IOException {
    try (Disk.File file = disk.read(PATH)) {
      return file.bytes(0, (int) file.size());
    }
  }

  /** A disk on which the file has this content. */
  private void found(byte[] content) {
    disk = new FaultyDisk(new Random(1));
    disk.replace(PATH, content);
  }

  private VerifyLedger.Checked verified() throws IOException {
    return VerifyLedger.file(disk, PATH, "BT24", line -> {});
  }

  private static List<Entry> entries(int first, int count) {
    List<Entry> entries = new ArrayList<>();
    for (int seq = first; seq < first + count; seq++) {
      entries.add(
          new Entry(
              LineText.VERSION,
              new EntryRef("BT24", seq),
              OffsetDateTime.parse("2026-03-02T08:00:00+01:00"),
              new Hlc(1_772_434_800_000L + seq, 0),
              "AB",
              "weighing",
              1,
              true,
              Map.of("filter", "F" + seq)));
    }
    return entries;
  }

  /** How many lines are read from these bytes; what is left of the file holds just these. */
  private int read(byte[] bytes) throws IOException {
    found(bytes);
    try (LedgerFile file = open()) {
      int lines = file.readOn(1000).size();
      assertEquals("", file.position().trouble());
      assertEquals(file.position().end(), bytes().length);
      return lines;
    }
  }

  @Test
  void cutAnywhereTheActIsSetAsideWhole() throws IOException {
    for (int length = act; length < whole.length - 1; length++) {
      assertEquals(1, read(Arrays.copyOf(whole, length)), "cut at " + length);
      assertEquals(act, bytes().length);
    }
    assertEquals(4, read(Arrays.copyOf(whole, whole.length - 1)), "only the newline is missing");
    assertArrayEquals(whole, bytes());
  }

  @Test
  void aHoleAnywhereInItSetsTheActAsideWhole() throws IOException {
    for (int at = act; at + 20 < whole.length; at++) {
      byte[] holed = whole.clone();
      Arrays.fill(holed, at, at + 20, (byte) 0);
      assertEquals(1, read(holed), "hole at " + at);
      assertFalse(verified().torn());
    }
  }

  @Test
  void aHoleBeforeALaterActIsDamageAndNothingIsSetAside() throws IOException {
    byte[] holed = whole.clone();
    Arrays.fill(holed, 40, 60, (byte) 0);
    found(holed);
    try (LedgerFile file = open()) {
      assertEquals(3, file.readOn(1000).size());
      assertTrue(file.position().trouble().contains("cannot be read"));
    }
    assertArrayEquals(holed, bytes());
    VerifyLedger.Checked checked = verified();
    assertEquals(1, checked.problems().get(0).line());
    assertFalse(checked.torn());
  }

  @Test
  void workGoesOnAfterAHalfAct() throws IOException {
    found(Arrays.copyOf(whole, whole.length - 10));
    try (LedgerFile file = open()) {
      file.readOn(1000);
      assertEquals(2, file.append(entries(2, 2)).get(0).entry().ref().seq());
    }
    VerifyLedger.Checked checked = verified();
    assertEquals(List.of(), checked.problems());
    assertEquals(3, checked.entries());
  }
}
