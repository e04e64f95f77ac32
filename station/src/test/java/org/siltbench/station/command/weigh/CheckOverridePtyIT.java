package org.siltbench.station.command.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.FastTime;
import org.siltbench.station.work.method.MethodBook;

/**
 * A balance on a pseudo-terminal fails its check in a lab with people whose method stops at that: a
 * supervisor says to weigh on, and a weigher does.
 */
@Timeout(180)
class CheckOverridePtyIT {

  private static final int FASTER = 10;

  @TempDir Path folder;
  private PtyFeed balance;
  private CommandLab lab;

  @BeforeEach
  void setUp() throws Exception {
    balance = new PtyFeed(folder.resolve("port"), 100 / FASTER, "0.00000 g");
    lab = new CommandLab(folder.resolve("lab"), new FastTime(FASTER));
    lab.ok("lab", "new", "--name", "North");
    Files.writeString(folder.resolve("SU"), "4711\n");
    Files.writeString(folder.resolve("AB"), "1234\n");
    lab.ok("people", "add", "SU", "--right", "supervise", "--new-pin-file", pin("SU"));
    lab.ok(as("SU", "people", "add", "AB", "--right", "weigh", "--new-pin-file", pin("AB")));
    Path methods = Files.createDirectories(lab.folder().resolve("methods"));
    String preset = MethodBook.of(folder).get("epa-160.2").text();
    Files.writeString(
        methods.resolve("strict.method"),
        preset
            .replace("epa-160.2", "strict")
            .replaceFirst("missing_check = *warn", "missing_check = stop"));
    lab.ok(as("AB", "lot", "new", "--name", "L", "--washed"));
    lab.ok(
        as(
            "AB",
            "batch",
            "new",
            "--name",
            "A",
            "--lot",
            "L",
            "--method",
            "strict",
            "--count",
            "2"));
    lab.watching(this::hand);
  }

  @AfterEach
  void tearDown() throws Exception {
    balance.close();
  }

  private String pin(String who) {
    return folder.resolve(who).toString();
  }

  private String[] as(String who, String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--operator", who, "--pin-file", pin(who)));
    return all.toArray(new String[0]);
  }

  /** Does what a person at the bench does when asked; the weight is 0.8 mg too heavy. */
  private void hand(String line) {
    if (line.contains("\"event\":\"place\"")) {
      balance.show(line.contains("100mg") ? "0.10081 g" : "0.11234 g");
    } else if (line.contains("\"event\":\"take-off\"")) {
      balance.show("0.00000 g");
    }
  }

  private int preweigh(String... more) {
    balance.show("0.00000 g");
    List<String> words =
        new ArrayList<>(List.of("preweigh", "--batch", "A", "--balance", balance.spec()));
    words.addAll(List.of("--json", "--events"));
    words.addAll(List.of(more));
    return lab.run(as("AB", words.toArray(new String[0])));
  }

  private List<?> weighings() throws Exception {
    return (List<?>) lab.document().get("weighings");
  }

  @Test
  void the_weigher_is_stopped_until_a_supervisor_gives_a_reason_and_every_paper_tells_it()
      throws Exception {
    String[] check = {"checkweight", "--balance", balance.spec(), "--weight", "100mg"};
    assertEquals(1, lab.run(as("AB", with(check, "--json", "--events"))), lab::err);
    assertEquals(false, lab.document().get("pass"));
    assertEquals(1, preweigh(), lab::err);
    assertEquals(List.of(), weighings());
    assertTrue(lab.document().get("stopped").toString().contains("--override"), lab::out);
    String[] on = {"checkweight", "--balance", balance.spec(), "--override", "--reason"};
    String why = "the weight was dropped, a new one comes at noon";
    assertEquals(1, lab.run(as("AB", with(on, why))), lab::err);
    assertEquals(1, preweigh(), "the weigher's own word is none");
    lab.ok(as("SU", with(on, why, "--json")));
    assertEquals("failed", lab.document().get("fault"));
    assertEquals("SU", lab.document().get("by"));
    assertEquals(0, preweigh("--count", "1"), lab::err);
    assertTrue(lab.err().contains("SU has said"), lab::err);
    assertTrue(lab.err().contains(why), lab::err);
    assertEquals(1, weighings().size());
    assertEquals("0.11234", ((Map<?, ?>) weighings().get(0)).get("mass_g"));
    String log = log();
    assertTrue(log.contains("in spite of a check"), log);
    assertTrue(log.contains(why), log);
    assertTrue(log.contains("overridden"), log);
    balance.show("0.00000 g"); // the filter is taken off
    assertEquals(1, lab.run(as("AB", with(check, "--json", "--events"))), lab::err);
    assertEquals(1, preweigh(), "the next check has ended it");
    assertTrue(VerifyLab.of(lab.folder(), List.of()).ok());
  }

  private static String[] with(String[] words, String... more) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of(more));
    return all.toArray(new String[0]);
  }

  private String log() throws Exception {
    Path pdf = folder.resolve("log.pdf");
    lab.ok(as("AB", "logsheet", "--batch", "A", "--out", pdf.toString()));
    try (var document = Loader.loadPDF(pdf.toFile())) {
      assertFalse(document.isEncrypted());
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }
}
