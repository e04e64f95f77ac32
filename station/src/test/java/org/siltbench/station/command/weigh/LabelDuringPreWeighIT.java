package org.siltbench.station.command.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.calc.id.BagCode;
import org.siltbench.calc.id.Scan;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.OwnProcess;
import org.siltbench.station.json.Json;

/**
 * A real {@code preweigh} process prints each label on a real queue as soon as its mass is on the
 * disk; the printer itself looks into the ledger. The codes are read back by libdmtx.
 */
@Timeout(180)
class LabelDuringPreWeighIT {

  private static final Pattern SIZE = Pattern.compile("Page size:\\s+([\\d.]+) x ([\\d.]+) pts");

  @TempDir Path folder;

  private LabelQueue queue;
  private CommandLab lab;
  private Process bench;
  private BufferedReader events;
  private OutputStream scanner;

  @BeforeEach
  void aQueueAndABatch() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/usr/sbin/cupsd")), "cupsd is missing");
    assumeTrue("root".equals(System.getProperty("user.name")), "NOT PROVEN: cupsd needs root");
    lab = new CommandLab(folder.resolve("lab"));
    lab.ok("lab", "new", "--practice");
    lab.ok("batch", "new", "--name", "B", "--lot", "L", "--method", "epa-160.2", "--count", "9");
    queue = LabelQueue.start(ledgerFile());
  }

  @AfterEach
  void stop() throws Exception {
    if (bench != null) {
      bench.destroyForcibly().waitFor();
    }
    if (queue != null) {
      queue.close();
    }
  }

  private Path ledgerFile() throws IOException {
    try (Stream<Path> files = Files.list(lab.folder().resolve("ledger"))) {
      return files.filter(file -> file.toString().endsWith(".jsonl")).findFirst().orElseThrow();
    }
  }

  private void begin(int count) throws IOException {
    List<String> words = OwnProcess.words();
    words.addAll(List.of("preweigh", "--batch", "B", "--balance", "practice?seed=5"));
    words.addAll(List.of("--count", "" + count, "--scan", "--label-printer", "label"));
    words.addAll(List.of("--media", "roll-70x50", "--dpi", "203", "--json", "--events"));
    words.addAll(List.of("--lab", lab.folder().toString()));
    ProcessBuilder builder =
        new ProcessBuilder(words).redirectOutput(folder.resolve("answer.json").toFile());
    builder.environment().put("CUPS_SERVER", queue.address());
    bench = builder.start();
    events = bench.errorReader(StandardCharsets.UTF_8);
    scanner = bench.getOutputStream();
  }

  /** Reads on until the bench asks for the bag, and returns what it told of labels before. */
  private List<Map<String, Object>> untilItAsksForTheBag() throws Exception {
    List<Map<String, Object>> told = new ArrayList<>();
    for (String line = events.readLine(); line != null; line = events.readLine()) {
      Map<String, Object> event = line.startsWith("{") ? Json.object(line) : Map.of();
      String kind = String.valueOf(event.get("event"));
      if (kind.startsWith("label") || kind.equals("recorded")) {
        told.add(event);
      } else if (kind.equals("scan-bag")) {
        told.add(event);
        return told;
      }
    }
    throw new AssertionError("the bench ended early: " + told);
  }

  private void scan(List<Map<String, Object>> told) throws IOException {
    scanner.write(
        (told.get(told.size() - 1).get("filter") + "\n").getBytes(StandardCharsets.UTF_8));
    scanner.flush();
  }

  private static List<String> kinds(List<Map<String, Object>> told) {
    return told.stream().map(event -> String.valueOf(event.get("event"))).toList();
  }

  @Test
  void eachRecordedMassIsOneJobAndWhatTheQueueDoesNotTakeWaitsInOrder() throws Exception {
    begin(6);
    List<Map<String, Object>> first = untilItAsksForTheBag();
    assertEquals(List.of("recorded", "label", "scan-bag"), kinds(first));
    queue.await(() -> queue.printed().size() == 1);

    queue.trayIsEmpty(true);
    scan(first);
    List<Map<String, Object>> second = untilItAsksForTheBag();
    queue.await(() -> queue.tell("lpstat", "-l", "-p", "label").contains("media-empty"));
    scan(second);
    List<Map<String, Object>> third = untilItAsksForTheBag();
    assertEquals(List.of("recorded", "label-waits", "scan-bag"), kinds(third));
    assertTrue(third.get(1).get("why").toString().contains("out of paper"), third::toString);

    queue.trayIsEmpty(false);
    queue.await(() -> queue.printed().size() == 2);
    queue.await(() -> !queue.tell("lpstat", "-l", "-p", "label").contains("media-empty"));
    scan(third);
    List<Map<String, Object>> fourth = untilItAsksForTheBag();
    assertEquals(List.of("recorded", "label", "label", "scan-bag"), kinds(fourth));
    assertEquals(third.get(0).get("filter"), fourth.get(1).get("filter"));
    queue.await(() -> queue.printed().size() == 4);

    queue.tell("cupsdisable", "label");
    scan(fourth);
    List<Map<String, Object>> fifth = untilItAsksForTheBag();
    assertTrue(fifth.get(1).get("why").toString().contains("paused"), fifth::toString);

    queue.off();
    scan(fifth);
    List<Map<String, Object>> sixth = untilItAsksForTheBag();
    assertEquals("label-waits", sixth.get(1).get("event"));
    scan(sixth);
    assertEquals(0, bench.waitFor(), () -> rest());
    Map<String, Object> answer = Json.object(Files.readString(folder.resolve("answer.json")));
    List<Object> waiting = List.of(filter(fifth), filter(sixth));
    assertEquals(waiting, answer.get("labels_waiting"));
    assertEquals(6, ((List<?>) answer.get("weighings")).size());
    assertEquals(4, queue.printed().size());

    printLaterAndAgain(waiting);
    proveEachJob(7);
    assertTrue(VerifyLab.of(lab.folder(), List.of()).ok());
  }

  private static Object filter(List<Map<String, Object>> told) {
    return told.get(0).get("filter");
  }

  private void printLaterAndAgain(List<Object> waiting) throws Exception {
    queue.on();
    queue.tell("cupsenable", "label");
    assertEquals(0, command("labels", "--batch", "B", "--new", "--printer", "label"), rest());
    queue.await(() -> queue.printed().size() == 5);
    assertEquals(
        0,
        command(
            "labels",
            "--batch",
            "B",
            "--filters",
            waiting.get(0).toString(),
            "--printer",
            "label"));
    queue.await(() -> queue.printed().size() == 6);
    List<Map<String, Object>> prints = prints();
    assertEquals(7, prints.size());
    assertEquals(
        List.of("first", "first", "first", "first", "first", "first", "reprint"),
        prints.stream().map(data -> data.get("why")).toList());
    assertEquals(waiting, List.of(prints.get(4).get("filter"), prints.get(5).get("filter")));
    assertEquals(waiting.get(0), prints.get(6).get("filter"));
  }

  /** A process of its own, which finds the queue by its environment. */
  private int command(String... words) throws Exception {
    List<String> all = OwnProcess.words();
    all.addAll(List.of(words));
    all.addAll(List.of("--media", "roll-70x50", "--dpi", "203", "--lab", lab.folder().toString()));
    ProcessBuilder builder =
        new ProcessBuilder(all)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("said").toFile());
    builder.environment().put("CUPS_SERVER", queue.address());
    return builder.start().waitFor();
  }

  @SuppressWarnings("unchecked") // the shape of a ledger line is known
  private List<Map<String, Object>> prints() throws Exception {
    List<Map<String, Object>> out = new ArrayList<>();
    for (String line : Files.readAllLines(ledgerFile())) {
      Map<String, Object> entry = Json.object(line);
      if (entry.get("kind").equals("label.printed")) {
        out.add((Map<String, Object>) entry.get("data"));
      }
    }
    return out;
  }

  /** Exact size; and when the label came out, its mass stood in the ledger already. */
  private void proveEachJob(int labels) throws Exception {
    int seen = 0;
    for (Path job : queue.printed()) {
      String info = run("pdfinfo", job.toString());
      Matcher size = SIZE.matcher(info);
      assertTrue(size.find(), info);
      assertEquals(70 / 25.4 * 72, Double.parseDouble(size.group(1)), 0.05);
      assertEquals(50 / 25.4 * 72, Double.parseDouble(size.group(2)), 0.05);
      int pages = Integer.parseInt(info.replaceAll("(?s).*Pages:\\s+(\\d+).*", "$1"));
      for (int page = 1; page <= pages; page++, seen++) {
        assertRecordedBefore(read(job, page), queue.witness(job));
      }
    }
    assertEquals(labels, seen);
  }

  private String read(Path job, int page) throws Exception {
    Path picture = folder.resolve("label");
    run(
        "pdftoppm",
        "-r",
        "300",
        "-gray",
        "-png",
        "-singlefile",
        "-f",
        "" + page,
        "-l",
        "" + page,
        job.toString(),
        picture.toString());
    return run("dmtxread", "-n", "-N1", "-m", "3000", picture + ".png").strip();
  }

  private static void assertRecordedBefore(String code, String ledger) {
    BagCode bag = ((Scan.Bag) Scan.of(code)).code();
    assertTrue(
        ledger
            .lines()
            .anyMatch(
                line ->
                    line.contains("\"kind\":\"weighing\"")
                        && line.contains("\"filter\":\"" + bag.filter().text() + '"')
                        && line.contains("\"mass_g\":\"" + bag.grams() + '"')),
        code);
  }

  private static String run(String... words) throws Exception {
    Process process =
        new ProcessBuilder(words).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }

  private String rest() {
    try {
      return Files.exists(folder.resolve("said"))
          ? Files.readString(folder.resolve("said"))
          : String.join("\n", events.lines().toList());
    } catch (IOException e) {
      return e.toString();
    }
  }

  @Test
  void aSheetIsRefusedBeforeTheFirstMass() throws Exception {
    String[] words = {
      "preweigh",
      "--batch",
      "B",
      "--balance",
      "practice",
      "--label-printer",
      "label",
      "--media",
      "sheet-a4-70x37"
    };
    assertEquals(2, lab.run(words), lab::err);
    assertTrue(lab.err().contains("needs a roll"), lab::err);
  }
}
