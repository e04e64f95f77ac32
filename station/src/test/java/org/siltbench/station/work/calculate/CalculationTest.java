package org.siltbench.station.work.calculate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.Methods;
import org.siltbench.station.Problem;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;

class CalculationTest {

  @TempDir Path folder;
  private final Method method = Methods.presets().get("sm-2540d-22");

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("t.csv"), text);
  }

  private String csv(String text) throws IOException {
    StringWriter out = new StringWriter();
    new Calculation(file(text), method).run(new CsvSink(out, method.report().digits()));
    return out.toString();
  }

  @SuppressWarnings("unchecked")
  private List<Map<String, Object>> rows(String text) throws IOException, NotJson {
    StringWriter out = new StringWriter();
    new Calculation(file(text), method).run(new JsonSink(out, method, JsonSink.Told.NOTHING));
    Map<String, Object> document = Json.object(out.toString().strip());
    assertEquals("sm-2540d-22", document.get("method"));
    return (List<Map<String, Object>>) document.get("rows");
  }

  private static double number(Map<String, Object> row, String name) {
    return new BigDecimal(String.valueOf(row.get(name))).doubleValue();
  }

  /** C = (m2 − m1)/V, u by JCGM 100:2008 5.1.2 with u(m) = 0.1 mg twice and u(V) = 3 mL. */
  @Test
  void the_worked_example_comes_out() throws Exception {
    Map<String, Object> row =
        rows("filter,role,pre_g,post_g,volume_ml,volume_u_ml\nF1,sample,0.11234,0.12891,500,3\n")
            .get(0);
    assertEquals(33.14, number(row, "conc_mg_l"), 1e-9);
    assertEquals(0.3457, number(row, "u_mg_l"), 5e-5);
    assertEquals(16.57, number(row, "residue_mg"), 1e-12);
  }

  @Test
  void extra_columns_are_kept_in_their_order_and_never_become_formulas() throws IOException {
    String out =
        csv(
            "note,filter,role,site,pre_g,post_g,volume_ml\n"
                + "=HYPERLINK(),F1,sample,A,0.11234,0.12891,500\n");
    assertTrue(out.startsWith("note,filter,role,site,pre_g,post_g,volume_ml,residue_mg,"), out);
    assertTrue(out.contains("'=HYPERLINK()"), out);
    assertTrue(out.contains(",16.57,0,33,"), out);
  }

  @Test
  void semicolons_decimal_commas_and_a_byte_order_mark_are_read() throws Exception {
    Map<String, Object> row =
        rows("\uFEFFfilter;role;pre_g;post_g;volume_ml\nF1;sample;0,11234;0,12891;500\n").get(0);
    assertEquals(33.14, number(row, "conc_mg_l"), 1e-9);
  }

  @Test
  void a_negative_residue_is_kept_and_flagged() throws Exception {
    Map<String, Object> row =
        rows("filter,role,pre_g,post_g,volume_ml\nB,method-blank,0.11234,0.11230,500\n").get(0);
    assertEquals(-0.04, number(row, "residue_mg"), 1e-12);
    assertTrue(String.valueOf(row.get("flags")).contains("negative"));
  }

  @Test
  void several_post_masses_are_judged_by_the_rule() throws Exception {
    List<Map<String, Object>> rows =
        rows(
            "filter,role,pre_g,post1_g,post2_g,volume_ml\n"
                + "F1,sample,0.11234,0.12900,0.12891,500\n"
                + "F2,sample,0.11234,0.13000,0.12891,500\n"
                + "F3,sample,0.11234,0.13000,,500\n");
    assertEquals("yes", rows.get(0).get("constant"));
    assertEquals("no", rows.get(1).get("constant"));
    assertEquals("unknown", rows.get(2).get("constant"));
  }

  @Test
  void no_row_gives_a_header_and_an_empty_document() throws Exception {
    assertTrue(csv("filter,role,pre_g,post_g\n").endsWith("constant,flags\r\n"));
    assertEquals(List.of(), rows("filter,role,pre_g,post_g\n"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "F1,sample,,0.12891,500|pre_g",
        "F1,sample,0.11234,,500|post_g",
        "F1,sample,abc,0.12891,500|pre_g",
        "F1,sample,0.11234,0.12891,0|volume_ml",
        "F1,sample,0.11234,0.12891,-5|volume_ml",
        "F1,sample,0.11234,0.12891,500 L|volume_ml",
        "F1,sample,0.11234,0.12891,99999999|volume_ml",
        "F1,dog,0.11234,0.12891,500|role",
        "F1,sample,NaN,0.12891,500|pre_g",
        "F1,sample,1e-1,0.12891,500|pre_g",
      })
  void a_bad_cell_is_named_by_line_and_column_and_no_result_is_given_out(
      String line, String column) {
    String text = "filter,role,pre_g,post_g,volume_ml\nF0,sample,0.1,0.2,500\n" + line + "\n";
    StringWriter out = new StringWriter();
    Problem.WrongUse no =
        assertThrows(
            Problem.WrongUse.class,
            () -> new Calculation(file(text), method).run(new CsvSink(out, 3)));
    assertTrue(no.what().contains("line 3") && no.what().contains(column), no.what());
    assertEquals("", out.toString());
    assertEquals(2, no.exitStatus());
  }

  @Test
  void a_filter_named_twice_and_a_missing_column_are_refused() {
    Problem.WrongUse twice =
        assertThrows(
            Problem.WrongUse.class,
            () -> csv("filter,role,pre_g,post_g\nF1,sample,0.1,0.2\nF1,sample,0.1,0.2\n"));
    assertTrue(twice.what().contains("line 3"), twice.what());
    assertThrows(Problem.WrongUse.class, () -> csv("filter,role,post_g\nF1,sample,0.2\n"));
  }

  @Test
  void a_long_table_streams() throws IOException {
    Path big = folder.resolve("big.csv");
    try (BufferedWriter out = Files.newBufferedWriter(big)) {
      out.write("filter,role,pre_g,post_g,volume_ml\n");
      for (int i = 0; i < 20_000; i++) {
        out.write("F" + i + ",sample,0.11234,0.12891,500\n");
      }
    }
    long[] rows = new long[1];
    Writer counting =
        new Writer() {
          @Override
          public void write(char[] text, int from, int count) {
            for (int i = from; i < from + count; i++) {
              rows[0] += text[i] == '\n' ? 1 : 0;
            }
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    new Calculation(big, method).run(new CsvSink(counting, 3));
    assertEquals(20_001, rows[0]);
  }
}
