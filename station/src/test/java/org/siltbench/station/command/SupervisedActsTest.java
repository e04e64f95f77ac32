package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.json.Json;

/** A lab with registered people: what takes a supervisor, by commands. */
class SupervisedActsTest {

  @TempDir Path folder;
  private CommandLab lab;
  private List<String> filters;

  @BeforeEach
  void aLabWithAWeigherAndASupervisor() throws Exception {
    lab = new CommandLab(folder.resolve("lab"));
    lab.ok("lab", "new", "--name", "North");
    for (String pin : List.of("4711", "1234", "0000")) {
      Files.writeString(folder.resolve(pin), pin + "\n");
    }
    lab.ok("people", "add", "SU", "--right", "supervise", "--new-pin-file", pin("4711"));
    lab.ok(as("SU", "people", "add", "AB", "--right", "weigh", "--new-pin-file", pin("1234")));
    lab.ok(as("AB", "lot", "new", "--name", "L", "--washed"));
    String[] batch = {"batch", "new", "--name", "B", "--lot", "L", "--method", "epa-160.2"};
    lab.ok(as("AB", with(batch, "--count", "4")));
    lab.ok("batch", "list", "--json");
    List<?> rows =
        (List<?>) ((Map<?, ?>) ((List<?>) Json.read(lab.out().strip())).get(0)).get("filters");
    filters = rows.stream().map(row -> (String) ((Map<?, ?>) row).get("filter")).toList();
    Path stated = folder.resolve("stated.csv");
    StringBuilder text = new StringBuilder("filter,mass_g\n");
    filters.forEach(id -> text.append(id).append(",0.1123\n"));
    Files.writeString(stated, text);
    String[] words = {"preweigh", "--batch", "B", "--stated", stated.toString()};
    lab.run(as("AB", with(words, "--at", "2026-03-02T08:00:00+01:00")));
    assertTrue(ledger().contains("\"kind\":\"weighing\""), lab.err());
  }

  private String pin(String name) {
    return folder.resolve(name).toString();
  }

  private static String[] with(String[] words, String... more) {
    String[] all = Arrays.copyOf(words, words.length + more.length);
    System.arraycopy(more, 0, all, words.length, more.length);
    return all;
  }

  private String[] as(String who, String... words) {
    return with(words, "--operator", who, "--pin-file", pin(who.equals("SU") ? "4711" : "1234"));
  }

  private String ledger() throws Exception {
    try (Stream<Path> files = Files.list(lab.folder().resolve("ledger"))) {
      return Files.readString(files.findFirst().orElseThrow());
    }
  }

  private String weighing() throws Exception {
    String line =
        ledger().lines().filter(l -> l.contains("\"kind\":\"weighing\"")).findFirst().orElseThrow();
    Map<String, ?> entry = Json.object(line);
    return entry.get("bench") + "/" + entry.get("seq");
  }

  /** The weigher is refused and nothing is written; without a reason so is the supervisor. */
  private void onlyASupervisorWithAReason(String... words) throws Exception {
    String before = ledger();
    assertTrue(lab.run(as("SU", with(words, "--reason", " "))) != 0, lab.err());
    assertEquals(before, ledger());
    onlyASupervisor(with(words, "--reason", "edge torn at unpacking"));
  }

  /** The last word is the reason. */
  private void onlyASupervisor(String... words) throws Exception {
    String before = ledger();
    assertEquals(1, lab.run(as("AB", words)), lab.err());
    assertTrue(lab.err().contains("supervise"), lab.err());
    assertEquals(before, ledger());
    lab.ok(as("SU", words));
    String added = ledger().substring(before.length());
    assertTrue(added.contains("\"by\":\"SU\""), added);
    assertTrue(added.contains(words[words.length - 1]), added);
  }

  @Test
  void rejectingAFilterTakesASupervisorAndAReason() throws Exception {
    onlyASupervisorWithAReason("reject", filters.get(0));
  }

  @Test
  void takingAnEntryBackTakesASupervisorAndAReason() throws Exception {
    onlyASupervisorWithAReason("correct", "--entry", weighing(), "--set", "void=true");
  }

  @Test
  void liftingAHoldTakesASupervisorAndHoldingDoesNot() throws Exception {
    lab.ok(as("AB", "hold", "--filters", filters.get(0), "--reason", "label smudged"));
    onlyASupervisorWithAReason("hold", "--filters", filters.get(0), "--lift");
  }

  @Test
  void anotherCorrectionIsTheWeighersOwn() throws Exception {
    String[] words = {"correct", "--entry", weighing(), "--set", "mass_g=0.1124"};
    lab.ok(as("AB", with(words, "--reason", "misread")));
  }

  @Test
  void acceptingAMassBeyondTheLimitAsksForAReasonFirst() {
    String[] words = {"postweigh", "--balance", "B1", "--keyed", "--accept", filters.get(0)};
    assertEquals(2, lab.run(as("SU", words)), lab.err());
    assertTrue(lab.err().contains("reason"), lab.err());
  }

  @Test
  void aMassFarTooLightIsAcceptedByASupervisorWhoseReasonStandsInTheEntry() throws Exception {
    String id = filters.get(0);
    received(id);
    String typed = id + " 0.1000 0.1000\n";
    String[] words = {"postweigh", "--balance", "B1", "--keyed", "--at", "2026-03-03T10:30+01:00"};
    String before = ledger();
    assertEquals(1, lab.input(typed).run(as("SU", words)), "the rule stops it for anyone");
    assertTrue(lab.err().contains("12.3 mg less"), lab.err());
    String[] accepting = with(words, "--accept", id, "--reason", "edge torn off, seen");
    assertEquals(1, lab.input(typed).run(as("AB", accepting)));
    assertTrue(lab.err().contains("supervise"), lab.err());
    assertEquals(before, ledger(), "nothing is recorded by those who may not");
    lab.input(typed).ok(as("SU", accepting));
    Map<String, ?> entry = Json.object(ledger().substring(before.length()).strip());
    Map<?, ?> data = (Map<?, ?>) entry.get("data");
    assertEquals("SU", entry.get("by"));
    assertEquals("0.1000", data.get("mass_g"));
    assertEquals(true, data.get("override"));
    assertEquals("edge torn off, seen", data.get("reason"));
  }

  /** Back from the field, dried and cooled. */
  private void received(String id) throws Exception {
    Path notes = folder.resolve("notes.csv");
    Files.writeString(
        notes,
        """
        filter,sample,role,site,collected,volume_ml,condition
        %s,S1,sample,Upper,2026-03-02T10:00:00+01:00,500,ok
        """
            .formatted(id));
    lab.run(as("AB", "receive", "--from", notes.toString()));
    String[] in = {"dry", "start", "--filters", id, "--temp", "104"};
    lab.ok(as("AB", with(in, "--in", "2026-03-03T08:00+01:00")));
    lab.ok(as("AB", "dry", "end", "--temp", "104", "--out", "2026-03-03T09:30+01:00"));
  }

  @Test
  void releasingTakesASupervisorWhoseReasonStandsInTheEntry() throws Exception {
    received(filters.get(0));
    String[] words = {"postweigh", "--balance", "B1", "--keyed", "--at", "2026-03-03T10:30+01:00"};
    lab.input(filters.get(0) + " 0.1200 0.1200\n").ok(as("AB", words));
    onlyASupervisor("release", "--batch", "B", "--accept", "the client waits for it");
  }

  @Test
  void weighingOnInSpiteOfACheckTakesASupervisorAndAReason() throws Exception {
    onlyASupervisorWithAReason("checkweight", "--balance", "tcp:scale:4001", "--override");
    assertTrue(ledger().contains("\"kind\":\"check.overridden\""), ledger());
    assertEquals(
        1,
        lab.run(
            as(
                "SU",
                "checkweight",
                "--balance",
                "tcp:scale:4001",
                "--override",
                "--reason",
                "once more")));
    assertTrue(lab.err().contains("already"), lab.err());
  }

  @Test
  void anOverrideWithAWrongPinWaitsLongerEachTime() throws Exception {
    String[] words = {"checkweight", "--balance", "tcp:scale:4001", "--override", "--reason"};
    String[] wrong = with(words, "late", "--operator", "SU", "--pin-file", pin("0000"));
    String before = ledger();
    for (int tries = 0; tries < 3; tries++) {
      assertEquals(1, lab.run(wrong));
    }
    assertEquals(1, lab.run(as("SU", with(words, "late"))), "even with the right PIN");
    assertTrue(lab.err().contains("Wait"), lab.err());
    assertEquals(before, ledger());
  }

  @Test
  void anOverrideWeighsNothingAndACheckTakesNoReason() throws Exception {
    String[] words = {"checkweight", "--balance", "tcp:scale:4001"};
    String before = ledger();
    assertEquals(2, lab.run(as("SU", with(words, "--override"))));
    assertEquals(
        2, lab.run(as("SU", with(words, "--override", "--weight", "1g", "--reason", "late"))));
    assertEquals(2, lab.run(as("SU", with(words, "--weight", "1g", "--reason", "late"))));
    assertEquals(2, lab.run(as("SU", words)));
    assertEquals(before, ledger());
  }

  @Test
  void takingAFileInAsksWhoIsThereAsOtherWritingDoesAndGivingOneAsksNobody() throws Exception {
    Files.writeString(folder.resolve("5555"), "5555\n");
    lab.ok(as("SU", "people", "add", "RD", "--right", "read", "--new-pin-file", pin("5555")));
    lab.ok("files", "--give", "epa-160.2.method", "--out", folder.resolve("given").toString());
    Path own = folder.resolve("own.method");
    String preset = Files.readString(folder.resolve("given/epa-160.2.method"));
    Files.writeString(own, preset.replace("epa-160.2", "own"));
    Path kept = lab.folder().resolve("methods/own.method");
    String[] take = {"files", "--take", own.toString()};
    assertEquals(1, lab.run(take), "nobody's PIN");
    assertFalse(Files.exists(kept));
    assertEquals(1, lab.run(with(take, "--operator", "RD", "--pin-file", pin("5555"))));
    assertTrue(lab.err().contains("weigh"), lab.err());
    assertFalse(Files.exists(kept));
    lab.ok(as("AB", take));
    assertTrue(Files.exists(kept));
    lab.ok("files");
  }

  @Test
  void wrongPinsMakeTheNextTryWait() throws Exception {
    String[] words = {"room", "--temperature", "21", "--operator", "SU", "--pin-file", pin("0000")};
    String before = ledger();
    for (int tries = 0; tries < 3; tries++) {
      assertEquals(1, lab.run(words));
      assertFalse(lab.err().contains("Wait"), lab.err());
    }
    assertEquals(1, lab.run(words));
    assertTrue(lab.err().contains("Wait"), lab.err());
    assertEquals(1, lab.run(as("SU", "room", "--temperature", "21")), "even with the right PIN");
    assertTrue(lab.err().contains("Wait"), lab.err());
    assertEquals(before, ledger());
  }
}
