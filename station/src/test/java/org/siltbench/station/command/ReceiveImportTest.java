package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.calc.id.BatchCode;
import org.siltbench.calc.id.BenchCode;
import org.siltbench.calc.id.FilterId;
import org.siltbench.station.bench.VerifyLab;

/** Notes in any shape: shown with every doubt, asked about, taken in, remembered. */
class ReceiveImportTest {

  @TempDir Path folder;
  private CommandLab lab;
  private List<String> filters;

  @BeforeEach
  void aLab() {
    lab = new CommandLab(folder.resolve("lab"));
    lab.ok("lab", "new", "--practice");
    filters =
        BatchCode.of(new BenchCode("K3DF"), 7).filters(4).stream().map(FilterId::text).toList();
  }

  @SuppressWarnings("unchecked") // the shape of the document is a contract
  private void bagsAreOut() throws Exception {
    lab.ok("batch", "new", "--name", "B", "--lot", "L", "--method", "epa-160.2", "--count", "4");
    lab.ok("preweigh", "--batch", "B", "--balance", "practice?seed=1");
    lab.ok("issue", "--batch", "B", "--trip", "T");
    lab.ok("batch", "list", "--json");
    Map<String, Object> batch =
        (Map<String, Object>)
            ((List<Object>) org.siltbench.station.json.Json.read(lab.out().strip())).get(0);
    filters =
        ((List<Map<String, Object>>) batch.get("filters"))
            .stream().map(filter -> (String) filter.get("filter")).toList();
  }

  private Path notes(String name, int first, String date) throws Exception {
    String text =
        "Filter-Nr.;Ort;Datum;Uhrzeit;Volumen;Wetter\n"
            + filters.get(first)
            + ";Mühle;"
            + date
            + ";9:45;250,5;Regen\n"
            + filters.get(first + 1)
            + ";Mühle;"
            + date
            + ";10:00;300;Regen\n";
    return Files.write(folder.resolve(name), text.getBytes(Charset.forName("windows-1252")));
  }

  private int receive(Path file, String... more) {
    List<String> words =
        new java.util.ArrayList<>(List.of("receive", "--from", file.toString(), "--import"));
    words.addAll(List.of(more));
    return lab.run(words.toArray(new String[0]));
  }

  @Test
  void everyDoubtIsShownWithItsAnswersAndNothingIsRecorded() throws Exception {
    assertEquals(1, receive(notes("a.csv", 0, "03.04.2026"), "--yes"));
    assertTrue(lab.err().contains("--as \"charset=windows-1252\""), lab::err);
    assertTrue(
        lab.err().contains("--as \"dates=day-first\" or --as \"dates=month-first\""), lab::err);
    assertTrue(lab.err().contains("--as \"unit:Volumen=mL\""), lab::err);
    assertTrue(lab.err().contains("Column \"Wetter\" is left out."), lab::err);
    lab.ok("batch", "list");
    assertFalse(lab.out().contains("received"), lab::out);
  }

  private static String[] answers(String... last) {
    List<String> all =
        new java.util.ArrayList<>(
            List.of(
                "--as",
                "charset=windows-1252",
                "--as",
                "dates=day-first",
                "--as",
                "unit:Volumen=mL"));
    all.addAll(List.of(last));
    return all.toArray(new String[0]);
  }

  @Test
  void itAsksBeforeItTakesIn() throws Exception {
    bagsAreOut();
    Path file = notes("a.csv", 0, "03.04.2026");
    lab.input("no\n");
    assertEquals(1, receive(file, answers()));
    assertTrue(lab.err().contains("Nothing was recorded."), lab::err);
    lab.input("yes\n");
    assertEquals(0, receive(file, answers()), lab::err);
    assertTrue(lab.out().contains("received " + filters.get(0)), lab::out);
    assertTrue(VerifyLab.of(lab.folder(), List.of()).ok());
  }

  @Test
  void aLabRemembersHowItsFilesAreReadAndSaysSo() throws Exception {
    bagsAreOut();
    assertEquals(0, receive(notes("a.csv", 0, "03.04.2026"), answers("--yes")), lab::err);
    assertEquals(0, receive(notes("b.csv", 2, "05.04.2026"), "--yes", "--json"), lab::err);
    assertTrue(lab.err().contains("Read as on "), lab::err);
    assertTrue(lab.err().contains("dates=day-first"), lab::err);
    assertTrue(lab.out().contains("\"collected\":\"2026-04-05T09:45\""), lab::out);
    assertTrue(lab.out().contains("\"volume_ml\":\"250.5\""), lab::out);
  }

  @Test
  void whatIsRememberedIsDoubtedAgainWhereItDoesNotFit() throws Exception {
    bagsAreOut();
    assertEquals(0, receive(notes("a.csv", 0, "03.04.2026"), answers("--yes")), lab::err);
    assertEquals(1, receive(notes("b.csv", 2, "04/15/2026"), "--yes"));
    assertTrue(lab.err().contains("do not all stand in one order"), lab::err);
  }

  @Test
  void messagesNameTheLineOfThePersonsFile() throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("c.csv"),
            "Alder Fork\n\nfilter;volume_ml\n"
                + filters.get(0)
                + ";250\n"
                + filters.get(1)
                + ";99000\n");
    assertEquals(2, receive(file, "--yes"));
    assertTrue(lab.err().contains("c.csv, line 5"), lab::err);
  }

  @Test
  void aNumberSaidTwiceOrAWordNobodyKnowsIsWrongUse() throws Exception {
    Path file = notes("a.csv", 0, "03.04.2026");
    assertEquals(2, receive(file, "--as", "dates=sometimes"));
    assertEquals(2, receive(file, "--as", "Wetter=weather"));
    assertTrue(lab.err().contains("A column means one of"), lab::err);
  }
}
