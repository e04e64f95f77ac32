package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a sceptic asks for at the command line: certificates, air, limits, charts, explanations. */
class NumbersCommandsTest {

  @TempDir Path folder;
  private CommandLab lab;

  @BeforeEach
  void open() {
    lab = new CommandLab(folder.resolve("lab"));
  }

  private static double number(Object value) {
    return ((Number) value).doubleValue();
  }

  /** OIML R 111-1 table 1: 100 mg F1 ± 0.05 mg; U 0.016 ≤ 0.05/3, |0.02| ≤ 0.05 − 0.016. */
  @Test
  void a_certificate_is_held_against_its_class_and_the_one_before() throws Exception {
    lab.ok("lab", "new");
    lab.ok(
        "weight",
        "--name",
        "W",
        "--nominal",
        "0.1",
        "--certified",
        "0.10002",
        "--U",
        "0.016",
        "--class",
        "F1",
        "--json");
    assertEquals("0.05", lab.document().get("class_limit_mg"));
    assertEquals(true, lab.document().get("class_accepted"));
    lab.ok(
        "weight",
        "--name",
        "W",
        "--nominal",
        "0.1",
        "--certified",
        "0.10006",
        "--U",
        "0.016",
        "--class",
        "F1",
        "--density",
        "7950",
        "--json");
    Map<String, Object> document = lab.document();
    assertEquals(false, document.get("class_accepted"));
    assertEquals(true, document.get("small_uncertainty"));
    assertEquals(false, document.get("within_reduced_limit"));
    assertEquals("0.04", document.get("change_mg"));
    assertEquals(0.04 / Math.hypot(0.016, 0.016), number(document.get("normalised_error")), 1e-6);
    // OIML D 28: conventional 100 g at 7950 kg/m³ is 100.000 094 35 g.
    assertEquals(0.10006 * 1.0000009435, number(document.get("true_mass_g")), 1e-10);
    assertEquals(
        2,
        lab.run(
            "weight",
            "--name",
            "X",
            "--nominal",
            "0.15",
            "--certified",
            "0.15",
            "--U",
            "0.01",
            "--class",
            "F1"));
    assertTrue(lab.err().contains("none between"), lab.err());
  }

  /** CIPM-2007 at 20 °C, 1013.25 hPa, 50 %: 1.199314 kg/m³ (check values A3). */
  @Test
  void the_rooms_air_has_a_density() throws Exception {
    lab.ok("lab", "new");
    lab.ok("room", "--temperature", "20", "--pressure", "1000", "--humidity", "50", "--json");
    assertEquals(1.183557, number(lab.document().get("air_kg_m3")), 1e-6);
    lab.ok("room", "--temperature", "20", "--pressure", "1013.25", "--humidity", "50", "--json");
    assertEquals(1.199314, number(lab.document().get("air_kg_m3")), 1e-6);
    double byHand = 120 * (1 / 2500.0 - 1 / 8000.0) * (1.199314 - 1.183557);
    assertEquals(byHand, number(lab.document().get("buoyancy_change_mg")), 1e-7);
  }

  /** RL = max(2.5, 10·0.1·√2, 10·0.3)/V; Stokes by the handbook: 2 µm sink 3.594e-6 m/s. */
  @Test
  void a_plan_tells_what_can_be_reported_and_how_soon_grains_sink() throws Exception {
    lab.ok(
        "plan",
        "--every",
        "15m",
        "--for",
        "2h",
        "--blank-sd",
        "0.3",
        "--volumes",
        "100..500",
        "--grain",
        "2",
        "--json");
    List<?> limits = (List<?>) lab.document().get("reporting_limits");
    Map<?, ?> small = (Map<?, ?>) limits.get(0);
    assertEquals(30, number(small.get("limit_mg_l")), 1e-9);
    assertEquals("blank", small.get("decided_by"));
    assertEquals(6, number(((Map<?, ?>) limits.get(1)).get("limit_mg_l")), 1e-9);
    // 0.1 m at 3.594e-6 m/s are 464 min: two figures.
    assertTrue(lab.document().get("sinking").toString().contains("10 cm in 460 min"), lab.out());
    lab.ok("plan", "--every", "15m", "--for", "2h", "--grain", "200");
    assertTrue(lab.out().contains("within seconds"), lab.out());
  }

  @Test
  void a_result_is_written_out_and_both_ways_compared() throws Exception {
    Path table = folder.resolve("t.csv");
    Files.writeString(
        table,
        "filter,role,pre_g,post_g,volume_ml,volume_u_ml\n"
            + "F1,sample,0.11234,0.12891,500,3\nF2,sample,0.11234,0.12891,500,100\n");
    lab.ok("calc", table.toString(), "--method", "sm-2540d-23", "--explain", "F1");
    assertTrue(lab.out().contains("Residue: 0.12891 g - 0.11234 g = 16.57 mg."), lab.out());
    assertTrue(lab.out().contains("16.57 mg / 0.5 L = 33.14 mg/L"), lab.out());
    assertTrue(!lab.out().contains("F2"), lab.out());
    lab.ok("calc", table.toString(), "--method", "sm-2540d-23", "--compare");
    List<String> lines = lab.out().lines().toList();
    assertTrue(lines.get(0).endsWith("low_mg_l,high_mg_l,first_order"), lines.get(0));
    assertTrue(lines.get(1).endsWith("agrees"), lines.get(1));
    assertTrue(lines.get(2).endsWith("differs"), lines.get(2));
    Path out = folder.resolve("o.csv");
    lab.ok("calc", table.toString(), "--method", "sm-2540d-23", "--out", out.toString());
    assertEquals(3, Files.readAllLines(out).size());
    Files.writeString(table, Files.readString(table) + "F3,sample,,1,2,3\n");
    Path none = folder.resolve("none.csv");
    assertEquals(
        2, lab.run("calc", table.toString(), "--method", "sm-2540d-23", "--out", none.toString()));
    assertTrue(Files.notExists(none), "a faulty table leaves no file");
  }

  @Test
  void a_chart_of_checks_says_when_it_has_too_few() throws Exception {
    lab.ok("lab", "new", "--practice");
    lab.ok("checkweight", "--balance", "practice?seed=5", "--weight", "100mg", "--json");
    assertEquals(List.of(), lab.document().get("signals"));
    lab.ok("control", "--json");
    assertEquals(1, ((List<?>) lab.document().get("points")).size());
    assertTrue(lab.err().contains("at least 8"), lab.err());
    lab.ok("control", "--blanks", "sm-2540d-23", "--json");
    assertEquals(List.of(), lab.document().get("points"));
    assertEquals(2, lab.run("control", "--blanks", "sm-2540d-23", "--kind", "sample"));
  }

  @Test
  void a_filter_that_is_not_in_the_table_is_not_passed_over_in_silence() throws Exception {
    Path table = folder.resolve("t.csv");
    Files.writeString(table, "filter,role,pre_g,post_g,volume_ml\nF1,sample,0.11234,0.12891,500\n");
    String[] words = {"calc", table.toString(), "--method", "sm-2540d-23", "--explain", "F9"};
    assertEquals(2, lab.run(words));
    assertTrue(lab.err().contains("has no filter \"F9\""), lab.err());
    words[5] = "all";
    assertEquals(0, lab.run(words), lab.err());
  }

  /** 40 CFR 136 App. B: blanks 0.2 … 0.4 give 0.6972; spikes by hand: s 0.1, t 3.143. */
  @Test
  void limits_come_from_spikes_and_blanks_and_the_greater_counts() throws Exception {
    Path table = folder.resolve("l.csv");
    String blanks =
        "blank,0.2\nblank,-0.1\nblank,0.3\nblank,0.1\nblank,0.0\nblank,0.2\nblank,0.4\n";
    String spikes = "spike,1.9\nspike,2.0\nspike,2.1\nspike,1.9\nspike,2.0\nspike,2.1\nspike,2\n";
    Files.writeString(table, "kind,result\n" + blanks + spikes);
    lab.ok("limits", table.toString(), "--json");
    Map<?, ?> ofBlanks = (Map<?, ?>) lab.document().get("mdl_blanks");
    assertEquals(0.6972, number(ofBlanks.get("limit")), 1e-4); // printed with t rounded
    assertEquals(0.15714, number(ofBlanks.get("mean")), 5e-6);
    Map<?, ?> ofSpikes = (Map<?, ?>) lab.document().get("mdl_spikes");
    assertEquals(3.143 * Math.sqrt(0.04 / 6), number(ofSpikes.get("limit")), 5e-5);
    assertEquals(0.6972, number(lab.document().get("mdl")), 1e-4);
    lab.ok("limits", table.toString());
    assertTrue(lab.out().contains("the greater of those there are: 0.697."), lab.out());
    Files.writeString(table, "kind,result\nblank,1\n");
    assertEquals(2, lab.run("limits", table.toString()));
    assertTrue(lab.err().contains("must be at least 7"), lab.err());
    Files.writeString(table, "kind,result\nsugar,1\n");
    assertEquals(2, lab.run("limits", table.toString()));
    assertTrue(lab.err().contains("spike or blank"), lab.err());
    Files.writeString(table, "kind,result\n" + "blank,1\n".repeat(100) + "blank,9\n");
    lab.ok("limits", table.toString(), "--json");
    assertEquals(1.0, number(lab.document().get("mdl_blanks_percentile")));
  }

  /**
   * ISO 11843-2 by hand: x 0…4, y = x ± 0.1; b 1, s² = 0.04/3, x̄²/s_xx = 4/10; x_C = t·s·√(1 + 1/5
   * + 0.4), t(0.95; 3) = 2.353363 (tables).
   */
  @Test
  void limits_come_from_a_calibration() throws Exception {
    Path table = folder.resolve("c.csv");
    Files.writeString(table, "given,found\n0,0.1\n1,0.9\n2,2.0\n3,2.9\n4,4.1\n");
    lab.ok("limits", table.toString(), "--json");
    double slope = 1.0;
    double s = Math.sqrt(0.04 / 3);
    double expected = 2.353363 * s / slope * Math.sqrt(1 + 0.2 + 0.4);
    assertEquals(expected, number(lab.document().get("critical")), 1e-5);
    assertEquals(3, number(lab.document().get("dof")));
    double detectable = number(lab.document().get("detectable"));
    assertTrue(detectable > expected && detectable < 2 * expected, "detectable " + detectable);
    lab.ok("limits", table.toString(), "--repeats", "4");
    assertTrue(lab.out().contains("means of 4 (ISO 11843-2)"), lab.out());
    assertEquals(2, lab.run("limits", table.toString(), "--repeats", "0"));
  }

  /** 16 000 ppm are 16 161.00 mg/L (equation, recomputed), by the revised table 16 160. */
  @Test
  void a_mass_ratio_is_turned_both_ways() throws Exception {
    lab.ok("ratio", "--ppm", "16000", "--json");
    assertEquals(16_161.00, number(lab.document().get("mg_l")), 5e-3);
    assertEquals(16_160, number(lab.document().get("table_mg_l")), 1e-9);
    lab.ok("ratio", "--mg-l", "106639.84", "--json");
    assertEquals(100_000, number(lab.document().get("ppm")), 5e-3);
    assertEquals(null, lab.document().get("table_mg_l"));
    lab.ok("ratio", "--ppm", "16000");
    assertTrue(lab.out().contains("16161.0 mg/L by the equation"), lab.out());
    assertEquals(2, lab.run("ratio"));
    assertEquals(2, lab.run("ratio", "--ppm", "1", "--mg-l", "1"));
    assertEquals(2, lab.run("ratio", "--ppm", "2000000"));
  }

  @Test
  void a_long_table_tells_how_far_it_is_where_events_are_asked_for() throws Exception {
    StringBuilder table = new StringBuilder("filter,role,pre_g,post_g,volume_ml\n");
    for (int i = 0; i < 9000; i++) {
      table.append('F').append(i).append(",sample,0.1000,0.1190,400\n");
    }
    Path file = Files.writeString(folder.resolve("long.csv"), table);
    String out = folder.resolve("out.csv").toString();
    CommandLab hasty = new CommandLab(folder.resolve("none"));
    hasty.at(new FastTime(1_000_000).withZone(ZoneOffset.UTC));
    hasty.ok("calc", file.toString(), "--method", "sm-2540d-23", "--out", out, "--events");
    assertTrue(hasty.err().contains("\"event\":\"progress\""), hasty::err);
    assertTrue(hasty.err().contains("\"what\":\"rows\""), hasty::err);
    assertTrue(hasty.err().contains("\"done\":4096"), hasty::err);
    assertEquals(9001, Files.readAllLines(Path.of(out)).size());
    lab.ok("calc", file.toString(), "--method", "sm-2540d-23", "--out", out);
    assertEquals(-1, lab.err().indexOf("so far"), lab::err);
  }
}
