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

  /** The act, shifted so that this byte of it is the last of a block; that one lost. */
  private byte[] losing(int at) throws IOException {
    int shift = Math.floorMod(511 - at, 512);
    disk = new FaultyDisk(new Random(1));
    try (LedgerFile file = open()) {
      file.append(List.of(remark(1, "x".repeat(shift))));
      file.append(entries(2, 3));
    }
    whole = bytes();
    byte[] lost = whole.clone();
    lost[at + shift] = 0;
    return lost;
  }

  @Test
  void oneByteLostAtTheEndOfABlockIsGivenBackByTheHash() throws IOException {
    int length = whole.length - act;
    int empty = remarkedLength();
    for (int at = empty; at < empty + length; at++) {
      byte[] lost = losing(at);
      assertEquals(4, read(lost), "byte " + at);
      assertArrayEquals(whole, bytes());
    }
  }

  @Test
  void anActCutShortAsWellIsSetAside() throws IOException {
    int empty = remarkedLength();
    byte[] lost = losing(empty + 100);
    int end = whole.length;
    assertEquals(1, read(Arrays.copyOf(lost, end - 30)));
    lost[end - 5] = 0;
    lost[end - 6] = 0;
    assertEquals(1, read(lost));
  }

  @Test
  void oneByteLostElsewhereOrBeforeALaterActIsDamage() throws IOException {
    int empty = remarkedLength();
    byte[] early = losing(100);
    assertDamaged(early);
    byte[] elsewhere = losing(empty + 100);
    elsewhere[empty + 100 + Math.floorMod(511 - empty - 100, 512)] = whole[0];
    assertDamaged(elsewhere);
  }

  private void assertDamaged(byte[] content) throws IOException {
    found(content);
    try (LedgerFile file = open()) {
      file.readOn(1000);
      assertTrue(file.position().trouble().contains("cannot be read"));
    }
    assertArrayEquals(content, bytes());
    assertEquals(1, verified().problems().size());
  }

  /** Length of a first line with an empty remark. */
  private int remarkedLength() throws IOException {
    disk = new FaultyDisk(new Random(1));
    try (LedgerFile file = open()) {
      file.append(List.of(remark(1, "")));
      return (int) file.position().end();
    }
  }

  private static Entry remark(int seq, String text) {
    Entry entry = entries(seq, 1).get(0);
    return entry.with(Map.of("filter", "F" + seq, "remark", text));
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
