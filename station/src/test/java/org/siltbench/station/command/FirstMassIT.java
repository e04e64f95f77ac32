package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.VerifyLab;

/**
 * What a newcomer does from unpacked to the first recorded mass, by the words of the pages, and how
 * much that is. A count here that grows is a fault, not a new number to write down.
 */
@Timeout(180)
class FirstMassIT {

  private static final Path ROOT = Path.of(System.getProperty("siltbench.root", "."));
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");
  private static final int FASTER = 5;
  private static final String MASS = "0.11234";

  /** Chunks of the balance seen on the screen before the newcomer takes the thing off again. */
  private static final int SEEN = 60;

  private static final String UNKNOWN =
      """
      siltbench line format 1
      name: wren
      line: 'GW' gap mark gap sign blanks number gap unit
      point: ,
      decimals: 5
      unit 'g': g
      mark 'ok': stable
      mark '..': moving
      """;

  /** What it took: commands typed, answers typed to them, things put on the pan. */
  private record Effort(int commands, int answers, int loads) {}

  @TempDir Path folder;

  private CommandLab lab;
  private int commands;
  private int answers;
  private int loads;
  private int seen;
  private final List<String> heard = new ArrayList<>();

  private void unpack() {
    lab = new CommandLab(folder.resolve("lab"), new FastTime(FASTER));
    lab.input(
        new InputStream() {
          @Override
          public int read() {
            answers++;
            return -1;
          }
        });
  }

  private static List<String> fence(String page, String heading) throws IOException {
    String text = Files.readString(ROOT.resolve(page));
    String section = text.substring(text.indexOf(heading));
    String open = section.substring(section.indexOf("```sh\n") + 6);
    return open.substring(0, open.indexOf("\n```")).lines().toList();
  }

  private static List<String> words(String line) {
    List<String> out = new ArrayList<>();
    Matcher word = WORD.matcher(line.replaceFirst("^(\\./)?siltbench ", ""));
    while (word.find()) {
      String quoted = word.group(1) != null ? word.group(1) : word.group(2);
      out.add(quoted != null ? quoted : word.group(3));
    }
    int own = out.indexOf("--lab");
    if (own >= 0) {
      out.subList(own, own + 2).clear();
    }
    return out;
  }

  private void type(List<String> words) {
    commands++;
    lab.ok(words.toArray(new String[0]));
  }

  /** The newcomer at a balance: does what the screen asks, and nothing else. */
  private void hand(PracticeProcess balance, String message) {
    heard.add(message);
    if (message.contains("put something on the pan")) {
      loads++;
      balance.act("put 2.00000");
    } else if (message.startsWith("  ") && ++seen == SEEN) {
      balance.act("off");
    } else if (message.startsWith("Place ")) {
      loads++;
      balance.act("put " + MASS);
    }
  }

  private Effort weighs(PracticeProcess balance, Path port) throws IOException {
    unpack();
    lab.watching(message -> hand(balance, message));
    for (String line : fence("docs/connect-your-balance.md", "## From unpacked")) {
      List<String> words = words(line);
      if (words.contains("find")) {
        words.addAll(List.of("--balance", "serial:" + port)); // no list has a pseudo-terminal
      }
      balance.awaitPort();
      type(words.contains("preweigh") ? withTheSpecItSaid(words, port) : words);
    }
    return new Effort(commands, answers, loads);
  }

  /** What the first command said to weigh with; the page shows it for a port of its own. */
  private List<String> withTheSpecItSaid(List<String> words, Path port) {
    String said =
        heard.stream().filter(m -> m.startsWith("Weigh with: ")).findFirst().orElseThrow();
    String spec = words(said.substring("Weigh with: ".length())).get(1);
    int at = words.indexOf("--balance") + 1;
    assertEquals("serial:/dev/ttyUSB0?format=mine", words.get(at));
    assertTrue(spec.startsWith("serial:" + port), spec);
    words.set(at, spec);
    return words;
  }

  private void assertOneMassNear(double grams) throws Exception {
    assertTrue(VerifyLab.of(lab.folder(), List.of()).ok());
    lab.ok("batch", "list", "--json");
    String out = lab.out();
    Matcher mass = Pattern.compile("\"pre_g\":\"([0-9.]+)\"").matcher(out);
    assertTrue(mass.find(), out);
    assertEquals(grams, Double.parseDouble(mass.group(1)), 0.0003, out);
  }

  @Test
  void aBalanceWithLinesOfItsOwnTakesThreeCommandsNoAnswerAndTwoLoads() throws Exception {
    Path port = folder.resolve("port");
    Path format = Files.writeString(folder.resolve("wren.lineformat"), UNKNOWN);
    String[] words = {"--seed", "7", "--speed", "" + FASTER, "--format", format.toString()};
    try (PracticeProcess balance = new PracticeProcess(port, words)) {
      assertEquals(new Effort(3, 0, 2), weighs(balance, port));
    }
    assertTrue(Files.exists(lab.folder().resolve("formats/mine.lineformat")));
    assertOneMassNear(0.11234);
  }

  @Test
  void aBalanceWithPlainLinesTakesThreeCommandsNoAnswerAndOneLoad() throws Exception {
    Path port = folder.resolve("port");
    String[] words = {"--seed", "7", "--speed", "" + FASTER};
    try (PracticeProcess balance = new PracticeProcess(port, words)) {
      assertEquals(new Effort(3, 0, 1), weighs(balance, port));
    }
    assertOneMassNear(0.11234);
  }
}
