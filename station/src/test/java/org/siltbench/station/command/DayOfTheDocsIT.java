package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.json.Json;

/** The day of the guide and the first weighing of the README, line by line, on a practice lab. */
class DayOfTheDocsIT {

  private static final Path ROOT = Path.of(System.getProperty("siltbench.root", "."));
  private static final Pattern LATER = Pattern.compile("# (\\d+) (minutes|hours) later");
  private static final Set<String> FILES = Set.of("--out", "--csv", "--card", "--from");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  @TempDir Path folder;
  private CommandLab lab;
  private final Hands hands = new Hands();

  /** A clock that is moved by hand. */
  private static final class Hands extends Clock {
    private Instant now = Instant.parse("2026-05-14T06:00:00Z");

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      now = now.plusMillis(1);
      return now;
    }
  }

  @BeforeEach
  void aFolder() {
    lab = new CommandLab(folder.resolve("lab")).at(hands);
  }

  private static List<String> fence(Path page, String heading) throws IOException {
    String text = Files.readString(page);
    String section = text.substring(text.indexOf(heading));
    String open = section.substring(section.indexOf("```") + 3);
    return open.substring(open.indexOf('\n') + 1, open.indexOf("\n```")).lines().toList();
  }

  private List<String> ids() throws Exception {
    lab.ok("batch", "list", "--json");
    Map<?, ?> batch = (Map<?, ?>) ((List<?>) Json.read(lab.out().strip())).get(0);
    List<String> out = new ArrayList<>();
    for (Object filter : (List<?>) batch.get("filters")) {
      out.add(String.valueOf(((Map<?, ?>) filter).get("filter")));
    }
    return out;
  }

  private void command(String line) throws Exception {
    List<String> words = new ArrayList<>();
    Matcher word =
        WORD.matcher(line.replaceFirst("\\s<.*", "").replaceFirst("^(\\./)?siltbench ", ""));
    while (word.find()) {
      String text = word.group(1) != null ? word.group(1) : word.group(2);
      boolean file = !words.isEmpty() && FILES.contains(words.get(words.size() - 1));
      words.add(file ? folder.resolve(text).toString() : text);
    }
    int own = words.indexOf("--lab");
    if (own >= 0) {
      words.subList(own, own + 2).clear();
    }
    if (words.contains("FILTERS")) {
      words.set(words.indexOf("FILTERS"), String.join(",", ids()));
    }
    if (line.contains("< scans.txt")) {
      lab.input(String.join("\n", ids()) + "\n");
    }
    lab.ok(words.toArray(new String[0]));
  }

  private void comment(String line) throws IOException {
    Matcher later = LATER.matcher(line);
    if (later.matches()) {
      long many = Long.parseLong(later.group(1));
      hands.now =
          hands.now.plus(
              later.group(2).equals("hours") ? Duration.ofHours(many) : Duration.ofMinutes(many));
    } else {
      assertTrue(line.startsWith("# fill in notes.csv"), line);
      fillIn(folder.resolve("notes.csv"));
    }
  }

  /** As a person does: a volume for each filter. */
  private static void fillIn(Path notes) throws IOException {
    List<String> lines = new ArrayList<>(Files.readAllLines(notes));
    int column = List.of(lines.get(0).split(",", -1)).indexOf("volume_ml");
    for (int i = 1; i < lines.size(); i++) {
      String[] cells = lines.get(i).split(",", -1);
      cells[column] = Integer.toString(240 + 10 * i);
      lines.set(i, String.join(",", cells));
    }
    Files.write(notes, lines);
  }

  private void follow(Path page, String heading) throws Exception {
    for (String line : fence(page, heading)) {
      if (line.startsWith("#")) {
        comment(line);
      } else {
        command(line);
      }
    }
  }

  @Test
  void theDayRunsAsItStands() throws Exception {
    follow(ROOT.resolve("docs/day-at-the-bench.md"), "## The whole day in one go");
    try (Stream<Path> files = Files.walk(folder)) {
      List<String> names = files.map(file -> file.getFileName().toString()).toList();
      assertTrue(
          names.containsAll(
              List.of(
                  "labels.pdf", "sheet.pdf", "door.pdf", "log.pdf", "report.pdf", "results.xlsx")),
          names::toString);
    }
    assertTrue(VerifyLab.of(lab.folder(), List.of()).ok());
  }

  @Test
  void theFirstWeighingOfTheReadmeRunsAsItStands() throws Exception {
    Path readme = ROOT.resolve("README.md");
    follow(readme, "## A first weighing");
    assertEquals(3, ids().size());
    List<String> lines = fence(readme, "## A first weighing");
    assertTrue(lines.get(2).startsWith("./siltbench preweigh"), "a step more than three");
  }
}
