package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.calc.id.BagCode;
import org.siltbench.labels.media.MediaCatalog;
import org.siltbench.labels.media.MediaText;
import org.siltbench.station.Problem;
import org.siltbench.station.work.scan.BagScan;

/**
 * Every file that comes from outside, spoilt in thousands of ways and given to the commands as they
 * are: read, or refused with a reason; never a failure nobody thought of, and the ledger stays
 * whole.
 */
class HostileInputTest {

  private static final int SOME = 25;
  private static final int MANY = 4_000;

  @TempDir Path folder;
  private CommandLab lab;

  private CommandLab lab(String name) {
    lab = new CommandLab(folder.resolve(name));
    lab.ok("lab", "new", "--name", name);
    return lab;
  }

  private void withBatch() {
    lab("lab");
    lab.ok("lot", "new", "--name", "L", "--washed", "--material", "glass fibre");
    lab.ok("batch", "new", "--name", "B", "--lot", "L", "--method", "epa-160.2", "--count", "6");
  }

  @SuppressWarnings("unchecked") // the shape of the document is a contract
  private List<String> filters() throws Exception {
    lab.ok("batch", "list", "--json");
    List<?> batches = (List<?>) org.siltbench.station.json.Json.read(lab.out().strip());
    List<Map<String, Object>> rows =
        (List<Map<String, Object>>) ((Map<String, Object>) batches.get(0)).get("filters");
    return rows.stream().map(row -> (String) row.get("filter")).toList();
  }

  /** Runs it on spoilt files; at least some must be refused, else the spoiling does nothing. */
  private void spoil(int count, long seed, String good, Path file, String... words)
      throws IOException {
    Hostile hostile = new Hostile(seed);
    int refused = 0;
    for (int i = 0; i < count; i++) {
      Files.write(file, hostile.bytes(good));
      int status = lab.run(words);
      assertFalse(
          lab.err().contains("did not expect"),
          () -> String.join(" ", words) + "\n" + lab.err() + "\n" + shown(file));
      refused += status == 0 ? 0 : 1;
    }
    assertTrue(refused > count / 10, "refused: " + refused + " of " + count);
  }

  private static String shown(Path file) {
    try {
      return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return e.toString();
    }
  }

  private void tables(int count) throws Exception {
    withBatch();
    List<String> filters = filters();
    Path file = folder.resolve("table.csv");
    String results =
        "filter,role,pre_g,post_g,volume_ml,volume_u_ml,site,time\n"
            + "F1,sample,0.11234,0.24125,500,3,A,2026-03-02T08:00:00+01:00\n"
            + "F2,method-blank,0.1120,0.1121,500,3,A,\n"
            + "F3,sample,0.1111,0.1311,250,3,\"B \"\"low\"\"\",\n";
    lab.ok("calc", write(file, results), "--method", "epa-160.2");
    spoil(count, 1, results, file, "calc", file.toString(), "--method", "epa-160.2", "--json");
    String stated =
        filters.stream()
            .map(id -> id + ",0.11234")
            .collect(Collectors.joining("\n", "filter,mass_g\n", "\n"));
    spoil(
        count,
        2,
        stated,
        file,
        "preweigh",
        "--batch",
        "B",
        "--stated",
        file.toString(),
        "--at",
        "2026-03-02T08:00:00+01:00");
    String receipt =
        "filter,sample,role,site,collected,filtered_from,taken,portions_ml,left_ml,left_to,condition,by\n"
            + filters.get(0)
            + ",S1,sample,A,2026-03-02T08:00:00+01:00,,aliquot,250+250,20,discarded,,AB\n"
            + filters.get(1)
            + ",S2,sample,A,2026-03-02 08:15,,whole,400,,,,AB\n";
    spoil(count, 3, receipt, file, "receive", "--from", file.toString());
    wholeStill();
  }

  private static String write(Path file, String text) throws IOException {
    return Files.writeString(file, text).toString();
  }

  private void wholeStill() {
    lab.ok("verify");
    lab.ok("rebuild", "--compare");
  }

  private void mediaAndMethods(int count) throws Exception {
    withBatch();
    Path media = folder.resolve("stock.media");
    String stock = MediaText.write(MediaCatalog.builtIn().get(0));
    Path out = folder.resolve("ruler.pdf");
    spoil(count, 4, stock, media, "ruler", "--media", media.toString(), "--out", out.toString());
    Path method = Files.createDirectory(lab.folder().resolve("methods")).resolve("own.method");
    String text = org.siltbench.calc.method.Presets.text("iso-11923").replace("iso-11923", "own");
    spoil(count, 5, text, method, "methods", "--json");
  }

  private void labFiles(int count) throws Exception {
    lab("lab");
    Path pin = Files.writeString(folder.resolve("pin"), "4711\n");
    lab.ok("people", "add", "SU", "--right", "supervise", "--new-pin-file", pin.toString());
    String[] by = {"--operator", "SU", "--pin-file", pin.toString()};
    lab.ok("close", by[0], by[1], by[2], by[3]);
    for (String name : List.of("people.json", "lab.json", "anchors.jsonl", "bench.key")) {
      Path file = lab.folder().resolve(name);
      String good = Files.readString(file, StandardCharsets.ISO_8859_1);
      Hostile hostile = new Hostile(name.hashCode());
      for (int i = 0; i < count; i++) {
        Files.write(file, hostile.bytes(good));
        for (String[] words :
            List.of(
                new String[] {"verify", "--json"},
                new String[] {"people", "list"},
                new String[] {"close", by[0], by[1], by[2], by[3]})) {
          lab.run(words);
          assertFalse(
              lab.err().contains("did not expect"),
              () -> name + " " + words[0] + "\n" + lab.err() + "\n" + shown(file));
        }
      }
      Files.writeString(file, good, StandardCharsets.ISO_8859_1);
    }
    wholeStill();
  }

  private void backups(int count) throws Exception {
    lab("lab");
    lab.ok("room", "--temperature", "20.5", "--humidity", "45", "--pressure", "1013");
    Path stick = Files.createDirectory(folder.resolve("stick"));
    Path backup =
        Path.of(
            (String) lab.ok("backup", "--to", stick.toString(), "--json").document().get("folder"));
    List<Path> files;
    try (Stream<Path> all = Files.walk(backup)) {
      files = all.filter(Files::isRegularFile).sorted().toList();
    }
    for (Path file : files) {
      byte[] good = Files.readAllBytes(file);
      Hostile hostile = new Hostile(file.getFileName().toString().length());
      for (int i = 0; i < count; i++) {
        Files.write(file, hostile.bytes(new String(good, StandardCharsets.UTF_8)));
        CommandLab other = new CommandLab(folder.resolve("r" + file.getFileName() + i));
        other.run("restore", "--from", backup.toString());
        assertFalse(
            other.err().contains("did not expect"),
            () -> file + "\n" + other.err() + "\n" + shown(file));
      }
      Files.write(file, good);
    }
  }

  private static void scans(int count) {
    Hostile hostile = new Hostile(9);
    String good = "BT2401CDX";
    int refused = 0;
    for (int i = 0; i < count; i++) {
      try {
        BagScan.of(hostile.text(good));
      } catch (Problem.Refused e) {
        refused++;
      }
    }
    assertTrue(refused > count / 2, "refused: " + refused);
    assertTrue(good.length() <= BagCode.MAX_LENGTH);
  }

  @Test
  void spoiltTablesAreReadOrRefusedWithAReason() throws Exception {
    tables(SOME);
  }

  @Test
  void spoiltStocksAndMethodsAreReadOrRefusedWithAReason() throws Exception {
    mediaAndMethods(SOME);
  }

  @Test
  void spoiltFilesOfALabAreReadOrRefusedWithAReason() throws Exception {
    labFiles(SOME / 4);
  }

  @Test
  void spoiltBackupsAreRestoredAsFarAsTheyAreWholeOrRefused() throws Exception {
    backups(SOME / 4);
  }

  @Test
  void spoiltScansAreRefusedWithAReason() {
    scans(20_000);
  }

  @Test
  @Tag("long")
  void thousandsOfSpoiltTables() throws Exception {
    tables(MANY);
  }

  @Test
  @Tag("long")
  void thousandsOfSpoiltStocksAndMethods() throws Exception {
    mediaAndMethods(MANY);
  }

  @Test
  @Tag("long")
  void hundredsOfSpoiltFilesOfALab() throws Exception {
    labFiles(MANY / 10);
  }

  @Test
  @Tag("long")
  void hundredsOfSpoiltBackups() throws Exception {
    backups(MANY / 10);
  }

  @Test
  @Tag("long")
  void aMillionSpoiltScans() {
    scans(1_000_000);
  }
}
