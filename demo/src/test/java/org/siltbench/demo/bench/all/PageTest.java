package org.siltbench.demo.bench.all;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.json.Json;

class PageTest {

  @TempDir Path folder;

  @Test
  void thePageInTheDocsSaysWhatTheHistoryHolds() throws IOException {
    Path docs = Path.of("..", "docs");
    History history = History.read(docs.resolve("benchmarks.jsonl"));
    assertFalse(history.runs().isEmpty());
    assertEquals(Page.of(history), Files.readString(docs.resolve("benchmarks.md")));
  }

  @Test
  void aRunComesBackFromItsLine() throws IOException {
    Path file = folder.resolve("history.jsonl");
    Figures one =
        run(Map.of("commit", new BigDecimal("1.153")), Map.of("start", "it ended with 3. \"No\""));
    History written = new History(List.of()).add(file, one).add(file, run(Map.of(), Map.of()));
    assertEquals(written, History.read(file));
    assertEquals(one, History.read(file).runs().get(0));
  }

  @Test
  void aDamagedHistoryIsToldByItsLineBeforeAnythingIsMeasured() throws IOException {
    Path file = folder.resolve("benchmarks.jsonl");
    Files.writeString(file, run(Map.of(), Map.of()).line() + "\n{\"at\":");
    IOException refused =
        assertThrows(
            IOException.class,
            () -> AllMeasure.run(new String[] {"--only", "parse", "--out", folder.toString()}));
    assertTrue(refused.getMessage().contains("line 2"), refused.getMessage());
  }

  @Test
  void anUnknownMeasureIsRefusedWithTheKnownOnes() {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> AllMeasure.run(new String[] {"--only", "parse,speed"}));
    assertTrue(refused.getMessage().contains("stability"), refused.getMessage());
  }

  @Test
  void whatAMeasurePrintedBeforeIsTaken() throws Exception {
    Path printed = folder.resolve("frames.json");
    Files.writeString(printed, "{\"later_than_100_ms\":0,\"most_ms\":\"68.6\",\"minutes\":10}");
    String take = "frames=" + printed;
    String page = AllMeasure.run(new String[] {"--take", take, "--out", folder.toString()});
    assertTrue(page.contains("| 0 | at most 0 | yes | 1 |"), page);
    assertTrue(page.contains("| 68.6 ms |"), page);
    assertThrows(
        IllegalArgumentException.class,
        () -> AllMeasure.run(new String[] {"--take", "frames", "--out", folder.toString()}));
  }

  @Test
  void ofEachFigureTheNewestRunThatHasItIsShown() {
    History history =
        new History(
            List.of(
                run(Map.of("commit", new BigDecimal("1.3"), "lost", BigDecimal.ZERO), Map.of()),
                run(Map.of("commit", new BigDecimal("1.153")), Map.of("open", "it said nothing"))));
    String page = Page.of(history);
    assertTrue(page.contains("median | 1.15 | at most 1.2 | yes | 2 |"), page);
    assertTrue(page.contains("told | 0 | at most 0 | yes | 1 |"), page);
    assertTrue(page.contains("median | 1: 1.3, 2: 1.15 |"), page);
    assertTrue(page.contains("| open |"), page);
  }

  @Test
  void aGoalThatIsMissedSaysSo() {
    String page =
        Page.of(new History(List.of(run(Map.of("kills", new BigDecimal("20")), Map.of()))));
    assertTrue(page.contains("| 20 | at least 1000 | **no** | 1 |"), page);
  }

  @Test
  void figuresAreTakenFromWhereTheyStand() throws Exception {
    Object document = Json.read("{\"a\":[{\"b\":\"1.5\"},{\"b\":2}],\"c\":0.25,\"d\":null}");
    assertEquals(Optional.of(new BigDecimal("1.5")), at("a/0/b").in(document));
    assertEquals(Optional.of(new BigDecimal("2")), at("a/1/b").in(document));
    assertEquals(Optional.of(new BigDecimal("0.25")), at("c").in(document));
    assertEquals(Optional.empty(), at("a/2/b").in(document));
    assertEquals(Optional.empty(), at("d").in(document));
    assertThrows(NumberFormatException.class, () -> at("a").in(document));
  }

  @Test
  void everyClaimHasAKeyOfItsOwnAndAMeasure() {
    List<String> measures = Measure.ALL.stream().map(Measure::name).toList();
    assertEquals(
        Measure.CLAIMS.size(),
        Measure.CLAIMS.stream().map(Claim::key).collect(Collectors.toSet()).size());
    assertTrue(Measure.CLAIMS.stream().allMatch(claim -> measures.contains(claim.measure())));
  }

  @Test
  void figuresAreShortAndNeverRoundedToZero() {
    assertEquals("0.00123", Page.shown(new BigDecimal("0.0012345"), "ms"));
    assertEquals("1,235,001", Page.shown(new BigDecimal("1235001"), ""));
    assertEquals("1,240,000", Page.shown(new BigDecimal("1235001"), "/s"));
    assertEquals("25.6", Page.shown(new BigDecimal("25.640"), "ms"));
    assertEquals("1,230", Page.shown(new BigDecimal("1234.6"), "ms"));
    assertEquals("0", Page.shown(new BigDecimal("0.000"), "ms"));
  }

  private static Claim at(String path) {
    return Claim.of("parse", "key", "words", path, "");
  }

  private static Figures run(Map<String, BigDecimal> figures, Map<String, String> failed) {
    return new Figures("2026-03-14 16:20+01:00", "abc", "a machine", "0.1", figures, failed);
  }
}
