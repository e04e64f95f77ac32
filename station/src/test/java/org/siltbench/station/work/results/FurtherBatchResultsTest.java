package org.siltbench.station.work.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.result.AnalyticalDays;
import org.siltbench.calc.result.Further;
import org.siltbench.calc.uncertainty.Part;
import org.siltbench.station.Problem;
import org.siltbench.station.life.TestLab;
import org.siltbench.station.life.VerdictRule;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.calculate.JsonSink;
import org.siltbench.station.work.lot.LotFitness;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.results.BatchResults.FilterResult;

/** Ignition, sand and fines, references and what the bench knows of weights and air, in a lab. */
class FurtherBatchResultsTest {

  @TempDir Path folder;
  private TestLab lab;
  private MethodBook methods;
  private List<String> ids;

  @BeforeEach
  void open() {
    lab = new TestLab(folder.resolve("lab"), 5);
    methods = MethodBook.of(folder);
    lab.write(
        "lot.created", "lot", "L1", "material", "glass fibre", "muffled", true, "dried", true);
    ids = lab.batch("sm-2540e-22", "sample", "sample", "reference", "method-blank");
    for (String id : ids) {
      weigh(id, "pre", "0.10000", "");
    }
  }

  @AfterEach
  void close() {
    lab.close();
  }

  private void weigh(String id, String status, String grams, String cycle) {
    lab.write(
        "weighing",
        "filter",
        id,
        "status",
        status,
        "round",
        1L,
        "mass_g",
        grams,
        "resolution_g",
        "0.00001",
        "u_g",
        "0.000003",
        "balance",
        "B1",
        "cycle",
        cycle,
        "purpose",
        "result",
        "observed",
        true,
        "rule",
        VerdictRule.data(methods.get("sm-2540e-22").constancy()));
  }

  private void receive(int i, Object... more) {
    Object[] all = new Object[4 + more.length];
    all[0] = "filter";
    all[1] = ids.get(i);
    all[2] = "taken";
    all[3] = "aliquot";
    System.arraycopy(more, 0, all, 4, more.length);
    lab.write("sample.received", all);
  }

  private void cycle(String cycle, String purpose, String... grams) {
    lab.write("dry.started", "cycle", cycle, "purpose", purpose, "filters", dishes(grams));
    lab.write("dry.ended", "cycle", cycle, "filters", ids.subList(0, grams.length));
    for (int i = 0; i < grams.length; i++) {
      weigh(ids.get(i), "post", grams[i], cycle);
    }
  }

  private List<Map<String, String>> dishes(String... grams) {
    return ids.subList(0, grams.length).stream()
        .map(id -> Map.of("filter", id, "dish", "d" + id))
        .toList();
  }

  private BatchResults results() {
    String batch = lab.state(ids.get(0)).batch();
    return BatchResults.of(lab.bench(), methods, Batches.require(lab.bench().register(), batch));
  }

  private static FilterResult row(BatchResults results, String id) {
    return results.rows().stream().filter(r -> r.state().id().equals(id)).findFirst().orElseThrow();
  }

  private void fill() {
    receive(
        0,
        "sample",
        "S1",
        "role",
        "sample",
        "volume_ml",
        "500",
        "condition",
        "sand-left",
        "filtered_to",
        "2020-01-01T00:00Z");
    receive(1, "sample", "S2", "role", "sample", "volume_ml", "500");
    receive(2, "sample", "R", "role", "reference", "volume_ml", "500", "expected_mg_l", "40");
    cycle("D1", "post", "0.12000", "0.13000", "0.11000", "0.10000");
    cycle("D2", "ignition", "0.11400", "0.12000", "0.10990", "0.09950");
  }

  /** SM 2540 E by hand: 20 mg dried, 6 mg gone, 0.5 mg of it the filter's own: 11 and 29 mg/L. */
  @Test
  void ignition_reference_and_flags_come_into_the_results() throws Exception {
    fill();
    BatchResults results = results();
    FilterResult first = row(results, ids.get(0));
    Further further = first.result().further();
    assertNotNull(further);
    assertEquals(11, further.ignited().volatileMgPerL(), 1e-9);
    assertEquals(29, further.ignited().fixedMgPerL(), 1e-9);
    assertFalse(first.result().flags().contains(Flag.NO_IGNITION_BLANK));
    assertFalse(first.result().flags().contains(Flag.MUFFLING_UNKNOWN));
    assertTrue(first.result().flags().contains(Flag.LATE_OVEN));
    assertTrue(first.result().flags().contains(Flag.SAND_IN_ALIQUOT));
    FilterResult other = row(results, ids.get(1));
    assertFalse(other.result().flags().contains(Flag.LATE_OVEN));
    assertFalse(other.result().flags().contains(Flag.SAND_IN_ALIQUOT));
    FilterResult reference = row(results, ids.get(2));
    assertEquals(50, reference.result().further().recovery().percent(), 1e-9);
    assertTrue(reference.result().flags().contains(Flag.RECOVERY_OUT));
    AnalyticalDays.Day day = results.report().days().get(0);
    assertEquals(List.of(2L, 1L), List.of(day.samples(), day.blanks()));

    Path out = folder.resolve("out");
    ResultFiles.write(lab.bench(), results, out, "", true);
    String csv = Files.readString(out.resolve("results.csv"));
    assertTrue(csv.lines().findFirst().orElseThrow().endsWith("u_recovery_pct"), csv);
    String sentences = Files.readString(out.resolve("explanations.txt"));
    assertTrue(sentences.contains("Residue: 0.12 g - 0.1 g = 20 mg."), sentences);
    Map<String, Object> document =
        ResultTable.document(results, new JsonSink.Told(true, ids.get(0)));
    @SuppressWarnings("unchecked") // the shape of the document is what is tested
    Map<String, Object> json = ((List<Map<String, Object>>) document.get("rows")).get(0);
    assertEquals(11, (Double) json.get("volatile_mg_l"), 1e-9);
    assertEquals("quantified", json.get("standing"));
    assertTrue(json.get("by_distributions").toString().contains("agree=true"), "" + json);
    assertTrue(json.get("explanation").toString().contains("Largest parts"), "" + json);
    List<String> said = new FurtherStatements(results).all(true);
    assertTrue(
        said.contains("S1: volatile suspended solids 11.0 (u 0.35), fixed 29.0 (u 0.35) mg/L.")
            || said.stream().anyMatch(s -> s.startsWith("S1: volatile suspended solids 11")),
        "" + said);
    assertTrue(said.stream().anyMatch(s -> s.contains("for 3 of 3 samples")), "" + said);
  }

  @Test
  void a_lot_that_was_not_muffled_or_burns_is_kept_out_of_the_furnace() {
    var register = lab.bench().register();
    LotFitness.requireForFurnace(register, "L1", ids.get(0));
    lab.write("lot.created", "lot", "L2", "material", "glass fibre", "muffled", false);
    lab.write("lot.created", "lot", "L3", "material", "cellulose acetate", "muffled", true);
    assertTrue(
        assertThrows(
                Problem.Refused.class,
                () -> LotFitness.requireForFurnace(lab.bench().register(), "L2", "F"))
            .what()
            .contains("not recorded as muffled"));
    assertTrue(
        assertThrows(
                Problem.Refused.class,
                () -> LotFitness.requireForFurnace(lab.bench().register(), "L3", "F"))
            .next()
            .contains("Never put it into a furnace"));
    assertThrows(
        Problem.Refused.class,
        () -> LotFitness.requireForFurnace(lab.bench().register(), "unknown", "F"));
  }

  /** Span 0.02 mg of 100 mg, drift (0.03 mg)/√3 of 100 mg, air from two notes of the room. */
  @Test
  void the_budget_knows_the_weights_certificates_and_the_rooms_air() {
    lab.write("balance.described", "balance", "B1", "repeatability_mg", "0.05");
    lab.write(
        "weight.described",
        "weight",
        "W",
        "nominal_g",
        "0.1",
        "certified_g",
        "0.10001",
        "u_mg",
        "0.01");
    lab.clock().advance(Duration.ofDays(365));
    lab.write(
        "weight.described",
        "weight",
        "W",
        "nominal_g",
        "0.1",
        "certified_g",
        "0.10004",
        "u_mg",
        "0.02");
    lab.write("check.weighed", "balance", "B1", "weight", "W", "pass", true, "error_mg", "0.01");
    lab.write("room.noted", "temperature_c", "20", "pressure_hpa", "1000", "humidity_pct", "50");
    lab.write("room.noted", "temperature_c", "20", "pressure_hpa", "1013.25", "humidity_pct", "50");
    fill();
    BatchResults results = results();
    assertNotNull(results.balance());
    assertEquals(0.02 / 100, results.balance().spanRelative(), 1e-12);
    assertEquals(0.03 / Math.sqrt(3) / 100, results.balance().driftRelative(), 1e-12);
    // CIPM-2007 at 20 °C, 50 %: 1.199314 and 1.183557 kg/m³ (check values A3).
    assertEquals((1.199314 - 1.183557) / Math.sqrt(3), results.balance().airDensityChange(), 1e-6);
    List<String> names =
        row(results, ids.get(0)).result().concentration().budget().parts().stream()
            .map(Part::name)
            .toList();
    assertTrue(names.containsAll(List.of("check weight", "drift", "air buoyancy")), "" + names);
  }
}
