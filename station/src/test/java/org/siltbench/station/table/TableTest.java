package org.siltbench.station.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;

class TableTest {

  @TempDir Path folder;

  private Table table(String text) throws IOException {
    return Table.open(Files.writeString(folder.resolve("t.csv"), text));
  }

  @Test
  void comma_semicolon_and_tab_are_told_from_the_first_line_and_a_byte_order_mark_is_skipped()
      throws IOException {
    for (String separator : new String[] {",", ";", "\t"}) {
      try (Table table =
          table("\uFEFFfilter" + separator + "Volume_mL\r\nF1" + separator + "250\r\n")) {
        Row row = table.next();
        assertEquals("F1", row.text("filter"));
        assertEquals("250", row.text(table.column("volume_ml")));
        assertEquals(2, row.line());
        assertFalse(table.hasNext());
      }
    }
  }

  @Test
  void a_quoted_cell_may_hold_separators_and_line_ends_and_lines_are_still_counted()
      throws IOException {
    try (Table table = table("a,b\n\"x, y\nz\",1\nlast,2\n")) {
      assertEquals("x, y\nz", table.next().text("a"));
      assertEquals(4, table.next().line());
    }
  }

  @Test
  void a_decimal_comma_is_read_only_where_it_cannot_mean_something_else() throws IOException {
    try (Table table = table("a;b\n0,12874;1,234\n")) {
      Row row = table.next();
      assertEquals(Optional.of("0.12874"), row.decimal(0, "a mass"));
      Problem.WrongUse no = assertThrows(Problem.WrongUse.class, () -> row.decimal(1, "a volume"));
      assertTrue(no.what().contains("thousands"), no.what());
    }
    try (Table table = table("a,b\n\"0,5\",1\n")) {
      Row row = table.next();
      assertThrows(Problem.WrongUse.class, () -> row.decimal(0, "a number"));
    }
  }

  @Test
  void a_wrong_cell_is_named_by_line_column_and_what_was_expected() throws IOException {
    try (Table table = table("filter,volume_ml\nF1,250\nF2,about 250\n")) {
      table.next();
      Row row = table.next();
      Problem.WrongUse no =
          assertThrows(Problem.WrongUse.class, () -> row.decimal(1, "a volume in mL"));
      assertTrue(
          no.what().contains("line 3, column 2 (volume_ml): \"about 250\" is not a volume in mL"),
          no.what());
      assertEquals(2, no.exitStatus());
    }
  }

  @Test
  void hostile_files_end_with_a_message_not_with_a_stack() throws IOException {
    assertThrows(Problem.WrongUse.class, () -> table(""));
    assertThrows(Problem.WrongUse.class, () -> table("a,a\n1,2\n"));
    assertThrows(Problem.WrongUse.class, () -> Table.open(folder.resolve("nowhere.csv")));
    Path latin = folder.resolve("latin.csv");
    Files.write(latin, "a,b\n1,caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThrows(Problem.WrongUse.class, () -> drain(latin));
    Path endless = folder.resolve("endless.csv");
    Files.writeString(endless, "a,b\n\"" + "x".repeat(300_000));
    assertThrows(Problem.WrongUse.class, () -> drain(endless));
    Path extra = Files.writeString(folder.resolve("extra.csv"), "a,b\n1,2,3\n");
    assertThrows(Problem.WrongUse.class, () -> drain(extra));
    Path junk = Files.writeString(folder.resolve("junk.csv"), "a,b\n\"1\"x,2\n");
    assertThrows(Problem.WrongUse.class, () -> drain(junk));
  }

  private static void drain(Path file) throws IOException {
    try (Table table = Table.open(file)) {
      while (table.hasNext()) {
        table.next();
      }
    }
  }

  @Test
  void no_cell_is_a_formula_and_numbers_stay_numbers() {
    for (String cell : new String[] {"=1+1", "+cmd", "-2+3", "@sum", "\tx", "  =1", "\uFF1D1"}) {
      assertEquals('\'', SafeCells.of(cell).charAt(0), cell);
    }
    for (String cell : new String[] {"-0.04", "+3", "1e-5", "", "abc", "0.12874"}) {
      assertEquals(cell, SafeCells.of(cell));
    }
  }
}
