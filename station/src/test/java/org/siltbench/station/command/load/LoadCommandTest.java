package org.siltbench.station.command.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.command.CommandLab;

/** The load of an event, from tables to pictures. No lab is needed. */
class LoadCommandTest {

  @TempDir private Path folder;

  private Path file(String name, String... lines) throws Exception {
    return Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n");
  }

  private CommandLab lab() {
    return new CommandLab(folder.resolve("lab"));
  }

  @SuppressWarnings("unchecked") // the shape of the document is what is tested
  private static List<Map<String, Object>> list(Object value) {
    return (List<Map<String, Object>>) value;
  }

  private static Map<String, Object> site(CommandLab lab) throws Exception {
    return list(lab.document().get("sites")).get(0);
  }

  private static double number(Map<String, Object> in, String name) {
    return ((Number) in.get(name)).doubleValue();
  }

  /**
   * 25.3 m³/s of 48 mg/L for a day: 0.0864·25.3·48 = 104.924 t (the exact factor; USGS practice).
   */
  @Test
  void aSteadyDayGivesTheTextbookLoad() throws Exception {
    Path flow = file("q.csv", "time,q_m3_s", "2026-05-14T00:00Z,25.3", "2026-05-15T00:00Z,25.3");
    Path samples =
        file(
            "c.csv",
            "sample,time,conc_mg_l,u_mg_l",
            "A,2026-05-14T00:00Z,48,1",
            "B,2026-05-15T00:00Z,48,1");
    CommandLab lab = lab();
    int exit =
        lab.run(
            "load",
            "--discharge",
            flow.toString(),
            "--samples",
            samples.toString(),
            "--json",
            "--flow-step",
            "1d",
            "--sample-step",
            "1d",
            "--shared-pct",
            "1");
    assertEquals(0, exit, lab.err());
    Map<String, Object> site = site(lab);
    assertEquals(104_924.16, number(site, "load_kg"), 0.01);
    assertEquals(104.924, number(site, "load_t"), 0.001);
    assertEquals(48, number(site, "flow_weighted_mean_mg_l"), 1e-9);
    assertEquals(1.0, number(site, "covered_share"), 0);
    assertEquals(104.924, number(list(site.get("samples")).get(0), "load_t_day"), 0.001);
    // Each point weighs 25.3·43.2 = 1092.96 kg per mg/L (GUM 5.2.2 by hand).
    double own = Math.sqrt(1 - 0.48 * 0.48) * 1092.96 * Math.sqrt(2);
    assertEquals(Math.hypot(own, 1049.2416), number(site, "u_load_kg"), 0.01);
    assertNull(site.get("rating"));
  }

  /** Short ton 907.18474 kg and foot 0.3048 m, exact: 1000 ft³/s of 10 mg/L give 26.96888 tons. */
  @Test
  void theUsUnitsUseTheExactFactors() throws Exception {
    Path flow = file("q.csv", "time,q_ft3_s", "2026-05-14T00:00Z,1000", "2026-05-15T00:00Z,1000");
    Path samples = file("c.csv", "time,conc_mg_l", "2026-05-14T00:00Z,10", "2026-05-15T00:00Z,10");
    CommandLab lab = lab();
    lab.run(
        "load",
        "--discharge",
        flow.toString(),
        "--samples",
        samples.toString(),
        "--json",
        "--flow-step",
        "1d",
        "--sample-step",
        "1d",
        "--units",
        "us");
    Map<String, Object> moment = list(site(lab).get("samples")).get(0);
    assertEquals(26.96888, number(moment, "load_short_tons_day"), 1e-5);
    assertEquals(1000, number(moment, "q_ft3_s"), 1e-9);
    assertEquals(26.96888, number(site(lab), "load_short_tons"), 1e-5);
    assertNull(site(lab).get("u_load_kg"));
  }

  @Test
  void aGapIsStatedAndNeverFilled() throws Exception {
    Path flow =
        file(
            "q.csv",
            "time,q_m3_s",
            "2026-05-14T00:00Z,2",
            "2026-05-14T01:00Z,2",
            "2026-05-14T02:00Z,",
            "2026-05-14T03:00Z,2",
            "2026-05-14T04:00Z,2");
    Path samples =
        file("c.csv", "time,conc_mg_l", "2026-05-14T00:00Z,100", "2026-05-14T04:00Z,100");
    CommandLab lab = lab();
    lab.run("load", "--discharge", flow.toString(), "--samples", samples.toString(), "--json");
    Map<String, Object> gap = list(site(lab).get("gaps")).get(0);
    assertEquals("2026-05-14T01:00:00Z", gap.get("from"));
    assertEquals("2026-05-14T03:00:00Z", gap.get("to"));
    assertEquals(120, number(gap, "minutes"), 0);
    assertEquals(0.5, number(site(lab), "covered_share"), 0);
    assertEquals(2 * 100 * 7200 / 1000.0, number(site(lab), "load_kg"), 1e-9);
    assertTrue(lab.document().get("notes").toString().contains("1 lines of the discharge table"));
  }

  /** Samples on C = 2·Q^1.5 exactly: no scatter, so that every correction is 1. */
  @Test
  void theRatingCurveIsFittedAndEachCorrectionIsNamed() throws Exception {
    Path flow =
        file(
            "q.csv",
            "site,time,q_m3_s",
            "Ford,2026-05-14T00:00Z,1",
            "ford,2026-05-14T01:00Z,4",
            "Ford ,2026-05-14T02:00Z,9",
            "Mill,2026-05-14T00:00Z,1");
    Path samples =
        file(
            "c.csv",
            "site,sample,role,time,conc_mg_l,u_mg_l",
            "Ford,S1,sample,2026-05-14T00:00Z,2,0.1",
            "Ford,S2,sample,2026-05-14T01:00Z,16,0.1",
            "Ford,S3,sample,2026-05-14T02:00Z,54,0.1",
            "Ford,B1,field-blank,2026-05-14T02:00Z,0.1,0.1");
    CommandLab lab = lab();
    Path out = folder.resolve("out");
    lab.run(
        "load",
        "--discharge",
        flow.toString(),
        "--samples",
        samples.toString(),
        "--json",
        "--out",
        out.toString(),
        "--log-base",
        "e");
    @SuppressWarnings("unchecked") // as above
    Map<String, Object> rating = (Map<String, Object>) site(lab).get("rating");
    assertEquals("e", rating.get("log_base"));
    assertEquals(Math.log(2), number(rating, "a"), 1e-12);
    assertEquals(1.5, number(rating, "b"), 1e-12);
    @SuppressWarnings("unchecked") // as above
    Map<String, Object> kg = (Map<String, Object>) rating.get("load_kg");
    assertEquals(
        List.of("none", "parametric", "smearing", "minimum-variance"), List.copyOf(kg.keySet()));
    double load = number(site(lab), "load_kg");
    kg.values().forEach(v -> assertEquals(load, num(v), 0.2 * load));
    assertEquals(num(kg.get("none")), num(kg.get("parametric")), 1e-9);
    assertEquals(num(kg.get("none")), num(kg.get("minimum-variance")), 1e-9);
    assertEquals("Ford: anticlockwise loop", title(out.resolve("loop-ford.svg")));
    assertTrue(site(lab).get("notes").toString().contains("the loop is not closed"));
    assertEquals(1200, ImageIO.read(out.resolve("loop-ford.png").toFile()).getWidth());
    assertEquals(4, Files.readAllLines(out.resolve("load.csv")).size());
    assertFalse(Files.exists(out.resolve("loop-ford.pdf")));
  }

  private static double num(Object value) {
    return ((BigDecimal) value).doubleValue();
  }

  private static String title(Path svg) throws Exception {
    String text = Files.readString(svg);
    return text.substring(text.indexOf("<title>") + 7, text.indexOf("</title>"));
  }

  @Test
  void theSedimentBeforeTheWaterTurnsClockwise() throws Exception {
    Path flow =
        file(
            "q.csv",
            "time,q_m3_s",
            "2026-05-14T00:00Z,1",
            "2026-05-14T01:00Z,3",
            "2026-05-14T02:00Z,5",
            "2026-05-14T03:00Z,3",
            "2026-05-14T04:00Z,1");
    Path samples =
        file(
            "c.csv",
            "time;conc_mg_l",
            "2026-05-14T00:00Z;10,5",
            "2026-05-14T01:00Z;300",
            "2026-05-14T02:00Z;200",
            "2026-05-14T03:00Z;80",
            "2026-05-14T04:00Z;10");
    CommandLab lab = lab();
    assertEquals(
        0, lab.run("load", "--discharge", flow.toString(), "--samples", samples.toString()));
    assertTrue(lab.out().contains("clockwise loop"), lab.out());
    assertFalse(lab.out().contains("anticlockwise"), lab.out());
    assertTrue(lab.out().contains("correction minimum-variance"), lab.out());
  }

  @Test
  void twoSamplesAtOneTimeAreRefusedUnlessTheyAreAPair() throws Exception {
    Path flow = file("q.csv", "time,q_m3_s", "2026-05-14T00:00Z,1", "2026-05-14T01:00Z,1");
    String[] rows = {
      "sample,time,conc_mg_l,u_mg_l,pair",
      "A,2026-05-14T00:00Z,10,3,P1",
      "B,2026-05-14T00:00Z,20,4,P1",
      "C,2026-05-14T01:00Z,15,1,"
    };
    CommandLab lab = lab();
    Path pair = file("c.csv", rows);
    assertEquals(
        0, lab.run("load", "--discharge", flow.toString(), "--samples", pair.toString(), "--json"));
    assertEquals(15, number(site(lab), "flow_weighted_mean_mg_l"), 1e-12);
    // Weights 1.8 kg per mg/L each; u(mean of 3 and 4) = 2.5.
    assertEquals(Math.hypot(1.8 * 2.5, 1.8), number(site(lab), "u_load_kg"), 1e-9);
    rows[2] = "B,2026-05-14T00:00Z,20,4,";
    Path apart = file("d.csv", rows);
    assertEquals(2, lab.run("load", "--discharge", flow.toString(), "--samples", apart.toString()));
    assertTrue(lab.err().contains("both collected at 2026-05-14T00:00:00Z"));
  }

  @Test
  void badCellsAndMissingTimesAreToldWithTheirPlace() throws Exception {
    Path good = file("q.csv", "time,q_m3_s", "2026-05-14T00:00Z,1", "2026-05-14T01:00Z,1");
    Path bad = file("bad.csv", "time,q_m3_s", "2026-05-14T00:00Z,1", "yesterday,1");
    Path samples = file("c.csv", "time,conc_mg_l", "2026-06-14T00:00Z,1", "2026-06-15T00:00Z,2");
    CommandLab lab = lab();
    assertEquals(
        2, lab.run("load", "--discharge", bad.toString(), "--samples", samples.toString()));
    assertTrue(lab.err().contains("line 3, column 1 (time)"), lab.err());
    assertEquals(
        2, lab.run("load", "--discharge", good.toString(), "--samples", samples.toString()));
    assertTrue(lab.err().contains("share no time"), lab.err());
    assertEquals(2, lab.run("load", "--discharge", good.toString()));
    assertTrue(lab.err().contains("either --batch or --samples"));
  }
}
