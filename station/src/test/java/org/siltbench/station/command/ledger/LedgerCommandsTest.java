package org.siltbench.station.command.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.command.CommandLab;

class LedgerCommandsTest {

  @TempDir Path folder;
  private CommandLab lab;

  @BeforeEach
  void aLab() {
    lab = new CommandLab(folder.resolve("lab"));
    lab.ok("lab", "new", "--name", "North");
    lab.ok("room", "--temperature", "20.5", "--humidity", "45", "--pressure", "1013");
  }

  private Path ledger() throws Exception {
    try (var files = Files.list(lab.folder().resolve("ledger"))) {
      return files.findFirst().orElseThrow();
    }
  }

  @Test
  void verifyPrintsItsDocumentAndNamesWhatItCompared() throws Exception {
    Map<String, Object> document = lab.ok("verify", "--json").document();
    assertEquals(true, document.get("ok"));
    assertEquals(2L, document.get("entries"));
    assertEquals(List.of(), document.get("anchors"));
    assertEquals(List.of(), document.get("problems"));
    String head = (String) document.get("head");
    lab.ok("verify", "--paper", head.substring(0, 16));
    assertTrue(lab.out().contains("holds: paper"), lab.out());
    assertEquals(1, lab.run("verify", "--paper", "0123456789abcdef"));
    assertEquals(2, lab.run("verify", "--paper", "coffee"));
  }

  @Test
  void verifyLocatesADamagedLineAndEndsWithOne() throws Exception {
    String text = Files.readString(ledger());
    Files.writeString(ledger(), text.replace("20.5", "20.6"));
    assertEquals(1, lab.run("verify", "--json"));
    Map<?, ?> problem = (Map<?, ?>) ((List<?>) lab.document().get("problems")).get(0);
    assertEquals(2L, problem.get("seq"));
    assertEquals(2L, problem.get("line"));
    assertEquals(false, lab.document().get("ok"));
  }

  @Test
  void closeSignsTheDayAndLinesCutOffAfterwardsAreFound() throws Exception {
    String head = (String) lab.ok("close", "--json").document().get("head");
    assertEquals(64, head.length());
    assertEquals("day-end", anchorKind());
    List<String> lines = Files.readAllLines(ledger());
    Files.write(ledger(), lines.subList(0, 1));
    assertEquals(1, lab.run("verify"));
    assertTrue(lab.out().contains("MISSING: day-end"), lab.out());
  }

  private Object anchorKind() throws Exception {
    List<?> anchors = (List<?>) lab.ok("verify", "--json").document().get("anchors");
    return ((Map<?, ?>) anchors.get(0)).get("kind");
  }

  @Test
  void rebuildGivesTheSameRegister() throws Exception {
    assertEquals(true, lab.ok("rebuild", "--compare", "--json").document().get("same"));
  }

  @Test
  void backupAndRestoreMakeANewBench() throws Exception {
    Path stick = Files.createDirectory(folder.resolve("stick"));
    Object backup = lab.ok("backup", "--to", stick.toString(), "--json").document().get("folder");
    CommandLab other = new CommandLab(folder.resolve("other"));
    Object entries =
        other.ok("restore", "--from", (String) backup, "--json").document().get("entries");
    assertEquals(3L, entries);
    assertEquals(true, other.ok("verify", "--json").document().get("ok"));
    assertEquals(1, other.run("restore", "--from", (String) backup));
  }

  @Test
  void writingAsksForAPinOnceThereIsASupervisorAndReadingDoesNot() throws Exception {
    Path pin = Files.writeString(folder.resolve("pin"), "4711\n");
    Path wrong = Files.writeString(folder.resolve("wrong"), "0000\n");
    lab.ok("people", "add", "SU", "--right", "supervise", "--new-pin-file", pin.toString());
    lab.ok("verify");
    lab.ok("people", "list", "--json");
    assertEquals(false, lab.document().get("open"));
    assertEquals(1, lab.run("room", "--temperature", "21"));
    assertEquals(
        1, lab.run("room", "--temperature", "21", "--operator", "su", "--pin-file", "" + wrong));
    lab.ok("room", "--temperature", "21", "--operator", "su", "--pin-file", pin.toString());
    assertTrue(Files.readString(ledger()).contains("\"by\":\"SU\""));
    assertEquals(1, lab.run("people", "remove", "SU"), "without a PIN");
    assertFalse(Files.readString(lab.folder().resolve("people.json")).contains("4711"));
  }

  @Test
  void shareExplainsAServerThatIsNotThereOrNoAddress() {
    assertEquals(3, lab.run("share", "--server", "jdbc:postgresql://127.0.0.1:1/lab"));
    assertTrue(lab.err().contains("works on"), lab.err());
    assertEquals(2, lab.run("share", "--server", "jdbc:h2:mem:x"));
    assertEquals(2, lab.run("share"));
  }
}
