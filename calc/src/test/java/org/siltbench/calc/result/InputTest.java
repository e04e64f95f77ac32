package org.siltbench.calc.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.siltbench.calc.method.Taken;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;

final class InputTest {

  private static final String HEADER =
      "filter,role,sample,pair,pair_kind,pre_g,post_g,volume_ml,volume_u_ml,taken";

  private static List<RowFault> faults(String header, String line) {
    List<RowFault> faults = new ArrayList<>();
    InputColumns columns = new InputColumns(List.of(header.split(",", -1)), 1);
    columns.read(List.of(line.split(",", -1)), 7, faults);
    return faults;
  }

  private static InputFaults refused(String... lines) {
    List<ResultRow> out = new ArrayList<>();
    List<InputRow> rows = Tables.rows(lines);
    InputFaults e =
        assertThrows(
            InputFaults.class,
            () -> new BatchCalculation(Tables.plain()).run(rows::forEach, out::add));
    assertEquals(List.of(), out, "nothing is given out before the table is known to be sound");
    return e;
  }

  @Test
  void every_column_is_read_in_any_order_and_unknown_ones_are_left_alone() {
    InputRow row =
        Tables.rows(
                " Volume_ML ,colour,taken,pair_kind,filter,ROLE,sample,pair,post_g,pre_g,volume_u_ml",
                " 250.5 ,red,Whole,bottle-split,F1,Sample,S1,P1,0.15000,0.1,2")
            .get(0);
    assertEquals("F1", row.filter());
    assertEquals(RowRole.SAMPLE, row.role());
    assertEquals("S1", row.sample());
    assertEquals("P1", row.pair());
    assertEquals("bottle-split", row.pairKind());
    assertEquals(Mass.ofMilligrams("100"), row.pre());
    assertEquals(List.of(Mass.ofMilligrams("150")), row.posts());
    assertTrue(row.postStated());
    assertEquals(Volume.ofMillilitres("250.5"), row.volume());
    assertEquals(2.0, row.volumeU());
    assertEquals(Taken.WHOLE, row.taken());
    assertEquals(2, row.line());
    // 0.1 may be a 0.10000 that a spreadsheet cut: the finest mass of the row tells the step.
    assertEquals(Mass.ofMilligrams("0.01"), row.resolution());
  }

  @Test
  void columns_that_are_not_there_are_empty() {
    InputRow row = Tables.rows("filter,role,pre_g,post_g", "F1,control,0.1000,0.1000").get(0);
    assertEquals("", row.sample());
    assertEquals("", row.pair());
    assertEquals("", row.pairKind());
    assertNull(row.volume());
    assertNull(row.volumeU());
    assertNull(row.taken());
    assertEquals("", row.sampleKey());
    InputRow short_ =
        Tables.rows("filter,role,pre_g,post_g,volume_ml", "F1,control,0.1000,0.1000").get(0);
    assertNull(short_.volume());
  }

  @Test
  void post_masses_are_taken_in_their_order_and_gaps_are_skipped() {
    InputRow row =
        Tables.rows(
                "filter,role,pre_g,post10_g,post2_g,post1_g,post3_g",
                "F1,sample,0.1,0.110,0.102,0.101,")
            .get(0);
    assertEquals(
        List.of(Mass.ofGrams("0.101"), Mass.ofGrams("0.102"), Mass.ofGrams("0.110")), row.posts());
    assertFalse(row.postStated());
    assertEquals(Mass.ofMilligrams("1"), row.resolution());
    InputRow both =
        Tables.rows("filter,role,pre_g,post_g,post1_g,post2_g", "F1,sample,0.1,,0.2,0.3").get(0);
    assertEquals(2, both.posts().size());
    InputRow whole = Tables.rows("filter,role,pre_g,post_g", "F1,sample,12,13").get(0);
    assertEquals(Mass.ofGrams("1"), whole.resolution());
    InputRow finest = Tables.rows("filter,role,pre_g,post_g", "F1,sample,0.123456789,13").get(0);
    assertEquals(new Mass(1), finest.resolution());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "F1,pond,,,,0.1,0.2,5,, | role | pond",
        "F1,,,,,0.1,0.2,5,, | role | ''",
        "F1,sample,,,,x,0.2,5,, | pre_g | x",
        "F1,sample,,,,0.1,0.2 g,5,, | post_g | 0.2 g",
        "F1,sample,,,,0.1,0.2,500 L,, | volume_ml | 500 L",
        "F1,sample,,,,0.1,0.2,1e3,, | volume_ml | 1e3",
        "F1,sample,,,,0.1,0.2,5,NaN, | volume_u_ml | NaN",
        "F1,sample,,,,0.1,0.2,5,,half | taken | half"
      })
  void what_cannot_be_read_is_told_with_line_column_and_expectation(
      String line, String column, String found) {
    List<RowFault> faults = faults(HEADER, line);
    assertEquals(1, faults.size(), faults.toString());
    assertEquals(7, faults.get(0).line());
    assertEquals(column, faults.get(0).column());
    assertEquals(found, faults.get(0).found());
    assertFalse(faults.get(0).expected().isBlank());
    String what = found.isEmpty() ? "nothing there" : "found \"" + found + '"';
    assertTrue(
        faults
            .get(0)
            .toString()
            .startsWith("line 7, column " + column + ": " + what + ", expected "),
        faults.get(0).toString());
  }

  @Test
  void post_g_and_post1_g_together_are_refused_for_which_one_counts() {
    List<RowFault> faults = faults("filter,role,pre_g,post_g,post1_g", "F1,sample,0.1,0.2,0.2");
    assertEquals("post_g", faults.get(0).column());
    assertTrue(faults.get(0).expected().contains("not both"));
  }

  @Test
  void a_wrong_numbered_post_mass_names_its_own_column() {
    assertEquals(
        "post2_g",
        faults("filter,role,pre_g,post1_g,post2_g", "F1,sample,0.1,0.2,y").get(0).column());
  }

  @Test
  void a_header_without_the_required_columns_is_refused_with_all_that_is_missing() {
    InputFaults e =
        assertThrows(InputFaults.class, () -> new InputColumns(List.of("Filter", ""), 3));
    assertEquals(
        List.of("role", "pre_g", "post_g"), e.faults().stream().map(RowFault::column).toList());
    assertEquals(3, e.faults().get(0).line());
    assertTrue(e.getMessage().contains("post1_g"), e.getMessage());
    assertEquals(3, e.count());
    InputFaults twice =
        assertThrows(
            InputFaults.class,
            () -> new InputColumns(List.of("\uFEFFfilter", "role", "pre_g", "post1_g", "role"), 1));
    assertEquals("role", twice.faults().get(0).column());
    // post2_g alone is not the first weighing.
    assertThrows(
        InputFaults.class,
        () -> new InputColumns(List.of("filter", "role", "pre_g", "post2_g"), 1));
    assertThrows(
        InputFaults.class,
        () -> new InputColumns(List.of("filter", "role", "pre_g", "post0_g"), 1));
  }

  @Test
  void missing_masses_and_names_are_refused() {
    InputFaults e =
        refused(
            HEADER, ",sample,,,,0.1,0.2,50,,", "F2,sample,,,,,0.2,50,,", "F3,sample,,,,0.1,,50,,");
    assertEquals(
        List.of("filter", "pre_g", "post_g"), e.faults().stream().map(RowFault::column).toList());
    assertEquals(List.of(2L, 3L, 4L), e.faults().stream().map(RowFault::line).toList());
    assertTrue(e.getMessage().contains("line 3, column pre_g: nothing there"), e.getMessage());
  }

  // The preset believes 1 mL to 5000 mL; "500 L" typed as mL is 500000.
  @ParameterizedTest
  @CsvSource({
    "sample, 0", "sample, -5", "sample, 0.999999", "sample, 5000.000001", "sample, 500000",
    "field-blank, 0", "method-blank, 0", "reference, 0", "trip-blank, -1", "control, 500000"
  })
  void a_volume_that_is_zero_negative_or_absurd_is_refused(String role, String volume) {
    InputFaults e = refused(HEADER, "F1," + role + ",,,,0.1,0.2," + volume + ",,");
    assertEquals("volume_ml", e.faults().get(0).column());
    assertEquals(volume, e.faults().get(0).found());
    assertTrue(e.getMessage().contains("1 to 5000"), e.getMessage());
  }

  @Test
  void the_ends_of_the_volume_range_are_taken_and_dry_blanks_may_say_zero() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain(),
            HEADER,
            "F1,sample,,,,0.1,0.2,1,,",
            "F2,sample,,,,0.1,0.2,5000,,",
            "T1,trip-blank,,,,0.1,0.1,0,,",
            "C1,control,,,,0.1,0.1,0,0.1,");
    assertEquals(4, out.rows().size());
  }

  @Test
  void an_uncertainty_of_the_volume_must_be_below_the_volume() {
    for (String wrong : List.of("-1", "100", "101")) {
      InputFaults e = refused(HEADER, "F1,sample,,,,0.1,0.2,100," + wrong + ",");
      assertEquals("volume_u_ml", e.faults().get(0).column());
    }
    assertEquals(
        0,
        Tables.calculate(Tables.plain(), HEADER, "F1,sample,,,,0.1,0.2,100,0,")
            .report()
            .flags()
            .size());
    InputRow nan =
        InputRow.of("F1", RowRole.SAMPLE)
            .pre(Mass.ZERO)
            .post(Mass.ZERO)
            .volumeU(Double.NaN)
            .build();
    InputFaults e =
        assertThrows(InputFaults.class, () -> Tables.calculate(Tables.plain(), List.of(nan)));
    assertTrue(e.getMessage().startsWith("column volume_u_ml: found \"NaN\""), e.getMessage());
    InputRow infinite =
        InputRow.of("F1", RowRole.SAMPLE)
            .pre(Mass.ZERO)
            .post(Mass.ZERO)
            .volumeU(Double.POSITIVE_INFINITY)
            .build();
    assertThrows(InputFaults.class, () -> Tables.calculate(Tables.plain(), List.of(infinite)));
  }

  @Test
  void a_filter_that_occurs_twice_is_refused_with_both_lines() {
    InputFaults e =
        refused(
            HEADER,
            "F1,sample,,,,0.1,0.2,50,,",
            "F2,sample,,,,0.1,0.2,50,,",
            "F1,control,,,,0.1,0.2,50,,",
            "F1,sample,,,,0.1,0.2,50,,");
    assertEquals(2, e.count());
    assertEquals(4, e.faults().get(0).line());
    assertEquals("F1", e.faults().get(0).found());
    assertTrue(e.getMessage().contains("on line 2 too"), e.getMessage());
  }

  @Test
  void of_many_faults_the_first_fifty_are_told_and_the_rest_counted() {
    List<String> lines = new ArrayList<>(List.of(HEADER));
    lines.addAll(Collections.nCopies(60, "F1,sample,,,,,,50,,"));
    InputFaults e = refused(lines.toArray(String[]::new));
    assertEquals(50, e.faults().size());
    assertEquals(120, e.count());
    assertTrue(e.getMessage().endsWith("… and 70 more"), e.getMessage());
    List<String> twice = new ArrayList<>(List.of(HEADER));
    twice.addAll(Collections.nCopies(60, "F1,sample,,,,0.1,0.2,50,,"));
    assertEquals(50, refused(twice.toArray(String[]::new)).faults().size());
  }

  @Test
  void rows_that_cannot_be_read_and_rows_that_cannot_be_calculated_are_told_together() {
    InputRow bad = InputRow.of("F2", RowRole.SAMPLE).line(3).pre(Mass.ZERO).build();
    RowFault unread = new RowFault(2, "volume_ml", "500 L", "a volume");
    RowSource source =
        reader -> {
          reader.accept(bad);
          throw new InputFaults(List.of(unread), 7);
        };
    InputFaults e =
        assertThrows(
            InputFaults.class, () -> new BatchCalculation(Tables.plain()).run(source, row -> {}));
    assertEquals(8, e.count());
    assertEquals(List.of(2L, 3L), e.faults().stream().map(RowFault::line).toList());
  }

  @Test
  void an_endless_cell_is_cut_in_the_message() {
    RowFault fault = new RowFault(0, "x", "9".repeat(500), "less");
    assertEquals("column x: found \"" + "9".repeat(40) + "…\", expected less", fault.toString());
    assertEquals(
        "column x: found \"" + "9".repeat(40) + "\", expected less",
        new RowFault(0, "x", "9".repeat(40), "less").toString());
  }

  @Test
  void the_words_of_roles_are_the_contract() {
    for (String word :
        List.of("sample", "field-blank", "trip-blank", "method-blank", "control", "reference")) {
      RowRole role = RowRole.of(word);
      assertEquals(word, role == null ? null : role.word());
    }
    assertNull(RowRole.of("spare"));
    assertTrue(RowRole.SAMPLE.isWater() && RowRole.REFERENCE.isWater());
    assertFalse(RowRole.CONTROL.isWater());
    assertEquals("sample\tS", InputRow.of("F", RowRole.SAMPLE).sample("S").build().sampleKey());
  }

  @Test
  void rows_stand_alone_unless_a_column_ties_them_to_others() {
    assertTrue(header("filter,role,pre_g,post_g,volume_ml").rowsStandAlone());
    for (String tie : List.of("sample", "pair", "ignited_g")) {
      assertFalse(header(tie + ",filter,role,pre_g,post_g").rowsStandAlone(), tie);
      assertFalse(header("filter,role,pre_g,post_g," + tie).rowsStandAlone(), tie);
    }
  }

  @Test
  void a_column_is_there_by_its_name_in_any_case() {
    InputColumns columns = header("Filter,ROLE,pre_g,post_g,Conductivity");
    assertTrue(columns.has("conductivity"));
    assertFalse(columns.has("sample"));
  }

  @Test
  void trials_are_seeded_by_the_sample_or_else_the_filter() {
    Tables.Outcome outcome =
        Tables.calculate(
            Tables.plain(),
            "filter,role,sample,pre_g,post_g,volume_ml",
            "F1,sample,S1,0.1000,0.1190,400",
            "F2,sample,,0.1000,0.1190,400");
    assertEquals(outcome.row("F1").input().sampleKey(), outcome.row("F1").seedName());
    assertEquals("F2", outcome.row("F2").seedName());
  }

  private static InputColumns header(String words) {
    return new InputColumns(List.of(words.split(",", -1)), 1);
  }
}
