package org.siltbench.station.command.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.FastTime;
import org.siltbench.station.json.Json;

/**
 * Balances that give one line a press, through the real commands: one that types like a keyboard,
 * one that sends on its own key over a real pseudo-terminal, and one without any port.
 */
@Timeout(120)
class PressedBalanceIT {

  private static final int FASTER = 50;

  @TempDir Path folder;

  private CommandLab lab;

  @BeforeEach
  void setUp() {
    lab = new CommandLab(folder.resolve("lab"), new FastTime(FASTER));
    lab.ok("batch", "new", "--name", "B", "--lot", "L", "--method", "epa-160.2", "--count", "3");
  }

  /** A person who presses the key as the hints ask, with what lies on the pan. */
  private final class Person {
    private final Key key;
    private final List<String> loads;
    private String onPan = "0.00000 g";

    Person(Key key, String... loads) {
      this.key = key;
      this.loads = new ArrayList<>(List.of(loads));
    }

    void hears(String line) {
      if (line.contains("\"event\":\"place\"")) {
        onPan = loads.remove(0);
        key.press(onPan);
      } else if (line.contains("nothing on the pan") || line.contains("with nothing on it")) {
        onPan = "0.00000 g";
        key.press(onPan);
      } else if (line.contains("press the key again") || line.contains("press again")) {
        key.press(onPan);
      } else if (line.contains("\"event\":\"filter\"") || line.contains("Press again later")) {
        key.press(onPan);
      }
    }
  }

  /** What a press does. */
  private interface Key {
    void press(String shown);
  }

  /** A keyboard: each line comes some seconds of the balance's clock after the one before. */
  private static final class Keyboard implements Key {
    private final PipedInputStream in = new PipedInputStream(1 << 16);
    private final OutputStream out;

    Keyboard() throws IOException {
      out = new PipedOutputStream(in);
    }

    @Override
    public void press(String shown) {
      try {
        pause();
        out.write((shown + "\n").getBytes(StandardCharsets.US_ASCII));
        out.flush();
      } catch (IOException e) {
        throw new AssertionError(e);
      }
    }
  }

  /** Six seconds of the balance's clock. */
  private static void pause() {
    long until = System.nanoTime() + 6_000_000_000L / FASTER;
    while (System.nanoTime() - until < 0) {
      Thread.onSpinWait();
    }
  }

  private List<String> masses() throws Exception {
    List<String> out = new ArrayList<>();
    for (Object one : (List<?>) lab.document().get("weighings")) {
      out.add(String.valueOf(((Map<?, ?>) one).get("mass_g")));
    }
    return out;
  }

  private List<String> filters() throws Exception {
    lab.ok("batch", "list", "--batch", "B", "--json");
    List<String> out = new ArrayList<>();
    Map<?, ?> one = (Map<?, ?>) ((List<?>) Json.read(lab.out().strip())).get(0);
    for (Object filter : (List<?>) one.get("filters")) {
      out.add(String.valueOf(((Map<?, ?>) filter).get("filter")));
    }
    return out;
  }

  private String ledger() throws IOException {
    try (var files = Files.list(lab.folder().resolve("ledger"))) {
      return Files.readString(
          files.filter(f -> f.toString().endsWith(".jsonl")).findFirst().orElseThrow());
    }
  }

  private int preweigh(Person person, String spec, int count) {
    lab.watching(person::hears);
    return lab.run(
        "preweigh",
        "--batch",
        "B",
        "--balance",
        spec,
        "--count",
        Integer.toString(count),
        "--json",
        "--events");
  }

  @Test
  void a_balance_that_types_gives_masses_by_two_presses_and_they_are_marked_for_good()
      throws Exception {
    Keyboard keyboard = new Keyboard();
    lab.input(keyboard.in);
    assertEquals(0, preweigh(new Person(keyboard, "0.12870 g", "0.11234 g"), "typed", 2), lab::err);
    assertEquals(List.of("0.12870", "0.11234"), masses());
    assertTrue(ledger().contains("\"stability\":\"two presses\""), this::err);
    assertFalse(ledger().contains("drift_mg_min"), this::err);
    assertTrue(ledger().contains("\"keyed\":false"), this::err);
    assertTrue(VerifyLab.of(lab.folder(), List.of()).ok());
  }

  private String err() {
    return lab.err();
  }

  @Test
  void lines_that_stand_there_all_at_once_prove_nothing_and_are_not_taken() throws Exception {
    lab.input("0.00000 g\n0.12870 g\n0.12870 g\n0.12870 g\n");
    assertEquals(3, lab.run("preweigh", "--batch", "B", "--balance", "typed", "--json"), lab::err);
    assertEquals(List.of(), masses());
    assertTrue(lab.err().contains("Too soon to tell rest"), lab::err);
    assertTrue(lab.err().contains("input has ended"), lab::err);
  }

  @Test
  void scans_and_typed_lines_share_one_input_after_the_field() throws Exception {
    prepare();
    String id = filters().get(0);
    Keyboard keyboard = new Keyboard();
    keyboard.press(id);
    Person person = new Person(keyboard, "0.14321 g");
    lab.watching(
        line -> {
          person.hears(line);
          if (line.contains("\"event\":\"recorded\"")) {
            close(keyboard.out);
          }
        });
    lab.input(keyboard.in);
    assertEquals(0, lab.run("postweigh", "--balance", "typed", "--json", "--events"), lab::err);
    assertEquals(List.of("0.14321"), masses());
    assertTrue(lab.out().contains("\"filter\":\"" + id + "\""), lab::out);
    saidForGood();
  }

  /** The clean mass was keyed in, the loaded one came by two presses: every paper says so. */
  private void saidForGood() throws Exception {
    lab.ok("results", "--batch", "B", "--json");
    String flags = ";" + field("flags") + ";";
    assertTrue(flags.contains(";keyed;") && flags.contains(";two-presses;"), flags);
    Path out = folder.resolve("out");
    lab.ok("results", "--batch", "B", "--out", out.toString());
    String report = words(out.resolve("report.pdf"));
    assertTrue(report.contains("told by two presses, not watched"), report);
    assertTrue(report.contains("keyed in, not read from the balance"), report);
    String weighings = Files.readString(out.resolve("weighings.csv"));
    assertTrue(weighings.contains(",two presses,") && weighings.contains(",keyed,"), weighings);
    Path sheet = folder.resolve("log.pdf");
    lab.ok("logsheet", "--batch", "B", "--out", sheet.toString());
    String log = words(sheet);
    assertTrue(log.contains("two presses, not watched") && log.contains("keyed in"), log);
  }

  private String field(String name) throws Exception {
    Map<?, ?> row = (Map<?, ?>) ((List<?>) lab.document().get("rows")).get(0);
    return String.valueOf(row.get(name));
  }

  private static String words(Path pdf) throws IOException {
    try (var document = Loader.loadPDF(Files.readAllBytes(pdf))) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  private static void close(OutputStream out) {
    try {
      out.close();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** Clean masses keyed in, a field record, an oven: what comes before the second weighing. */
  private void prepare() throws Exception {
    lab.input("0.12870\n0.12870\n0.11234\n0.11234\n0.11300\n0.11300\n");
    lab.ok("preweigh", "--batch", "B", "--keyed", "--balance", "shelf");
    Path notes =
        Files.writeString(
            folder.resolve("notes.csv"),
            "filter,sample,site,collected,volume_ml,taken\n"
                + filters().get(0)
                + ",S1,upper,"
                + ago(400)
                + ",500,aliquot\n");
    lab.ok("receive", "--from", notes.toString());
    lab.ok(
        "dry",
        "start",
        "--filters",
        filters().get(0),
        "--number",
        "--temperature",
        "104",
        "--in",
        ago(200));
    lab.ok("dry", "end", "--temperature", "104", "--out", ago(60));
  }

  private static String ago(int minutes) {
    return OffsetDateTime.ofInstant(Instant.now(), ZoneOffset.UTC).minusMinutes(minutes).toString();
  }

  @Test
  void a_balance_on_its_own_key_is_served_over_a_real_port() throws Exception {
    Files.createDirectories(lab.folder().resolve("formats"));
    Files.writeString(
        lab.folder().resolve("formats/onkey.lineformat"),
        """
        siltbench line format 1
        name: onkey
        line: blanks sign blanks number blanks unit
        decimals: 5
        unit 'g': g
        talks: on its key
        """);
    try (PtyKey port = new PtyKey(folder.resolve("port"))) {
      Person person = new Person(port, "0.12870 g", "0.11234 g");
      String spec = "serial:" + folder.resolve("port") + "?format=onkey";
      assertEquals(0, preweigh(person, spec, 2), lab::err);
    }
    assertEquals(List.of("0.12870", "0.11234"), masses());
    assertTrue(ledger().contains("\"stability\":\"two presses\""), this::err);
  }

  /** A key at the far end of a pseudo-terminal; the first line after opening is not read. */
  private static final class PtyKey implements Key, AutoCloseable {
    private final Process socat;
    private boolean synced;

    PtyKey(Path link) throws IOException, InterruptedException {
      socat =
          new ProcessBuilder("socat", "-", "pty,raw,echo=0,link=" + link)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      while (!Files.exists(link)) {
        Thread.onSpinWait();
      }
    }

    @Override
    public void press(String shown) {
      try {
        pause();
        OutputStream out = socat.getOutputStream();
        String lines = synced ? shown + "\r\n" : shown + "\r\n" + shown + "\r\n";
        synced = true;
        out.write(lines.getBytes(StandardCharsets.US_ASCII));
        out.flush();
      } catch (IOException e) {
        throw new AssertionError(e);
      }
    }

    @Override
    public void close() throws InterruptedException {
      int unused = socat.destroyForcibly().waitFor();
    }
  }

  @Test
  void a_balance_without_a_port_is_keyed_twice_and_marked_so_for_good() throws Exception {
    lab.input("0.12870\n0.12870\n0.11234\n0.11243\n0.11234\n0.11234\n");
    assertEquals(
        0,
        lab.run(
            "preweigh", "--batch", "B", "--keyed", "--balance", "shelf", "--count", "2", "--json"),
        lab::err);
    assertEquals(List.of("0.12870", "0.11234"), masses());
    assertTrue(lab.err().contains("The two differ; nothing is recorded."), lab::err);
    assertEquals(2, ledger().split("\"keyed\":true", -1).length - 1);
  }
}
