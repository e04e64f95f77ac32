package org.siltbench.station.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.ReadingSource;
import org.siltbench.balance.TypedReadings;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.people.People;
import org.siltbench.station.people.Right;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.weigh.Scale;

/** One run of one command: its common options, its output, and its lab once it asks for it. */
public final class Session implements AutoCloseable {

  private final Surroundings around;
  private final CommonOptions options;
  private @Nullable OpenLab bench;

  Session(Surroundings around, CommonOptions options) {
    this.around = around;
    this.options = options;
  }

  /** Input and output. */
  public Console console() {
    return around.console();
  }

  /** The time. */
  public Clock clock() {
    return around.clock();
  }

  /** The lab folder, there or not. */
  public Path labFolder() {
    Path dir = options.lab;
    return dir != null ? dir : around.home().resolve(".siltbench");
  }

  /** True if facts go out as one JSON document. */
  public boolean json() {
    return options.json;
  }

  /** True if events go out one JSON object a line. */
  public boolean events() {
    return options.events;
  }

  /** Opens balances, with the line formats saved in the lab. */
  public Scale.Opening balances() {
    return balances(TypedLines.NONE);
  }

  /**
   * The same; a balance that types like a keyboard types into standard input.
   *
   * @param others takes the lines of standard input that are not the balance's
   */
  public Scale.Opening balances(TypedLines others) {
    return spec -> {
      ReadingSource source = around.balances().open(spec, labFolder().resolve("formats"));
      if (source instanceof TypedReadings typed) {
        TypedFeed.start(console(), typed, others);
      }
      return source;
    };
  }

  /** The methods of the lab. */
  public MethodBook methods() {
    return MethodBook.of(labFolder());
  }

  /** A variable of the environment. */
  public Optional<String> variable(String name) {
    return Optional.ofNullable(around.environment().get(name));
  }

  /** A fact for people: standard output, or nothing under {@code --json}. */
  public void fact(String line) {
    if (!json()) {
      console().fact(line);
    }
  }

  /** The command's facts as one document, only under {@code --json}. */
  public void document(@Nullable Object tree) {
    if (json()) {
      console().document(tree);
    }
  }

  /**
   * A message to the person, on standard error; an event of its own where events were asked for.
   */
  public void message(String line) {
    if (events()) {
      Map<String, String> event = new LinkedHashMap<>();
      event.put("event", "message");
      event.put("text", line);
      console().event(event);
    } else {
      console().message(line);
    }
  }

  /**
   * Something on the way, on standard error: the event where events were asked for, else the line,
   * which may be empty.
   */
  public void progress(String line, Map<String, ? extends @Nullable Object> event) {
    if (events()) {
      console().event(event);
    } else if (!line.isEmpty()) {
      console().message(line);
    }
  }

  /**
   * Something that happened just now. The line is for people: on standard output, or on standard
   * error under {@code --json} unless events were asked for.
   */
  public void announce(String line, Map<String, ? extends @Nullable Object> event) {
    if (!json()) {
      console().fact(line);
    } else if (!events()) {
      console().message(line);
    }
    if (events()) {
      console().event(event);
    }
  }

  /** True if there is a lab in the folder. */
  public boolean labExists() {
    return around.labs().exists(labFolder());
  }

  /** The lab for a command that writes; made on first use. */
  public OpenLab bench() {
    OpenLab open = bench;
    if (open == null) {
      open = labExists() ? around.labs().open(labFolder(), who()) : create("bench", false);
      bench = open;
    }
    return open;
  }

  /** The lab for a command that only reads; refused where there is none. */
  public OpenLab existingBench() {
    if (bench == null && !labExists()) {
      throw new Problem.WrongUse(
          "There is no lab in " + labFolder() + '.',
          "Name one with --lab DIR, or make one: siltbench lab new.");
    }
    return bench();
  }

  /** Makes a new lab. */
  public OpenLab create(String name, boolean practice) {
    OpenLab made = around.labs().create(labFolder(), who(), name, practice);
    bench = made;
    message("New " + (practice ? "practice lab" : "lab") + " in " + labFolder() + '.');
    return made;
  }

  /** What a lab folder takes from outside, for commands that make folders in another way. */
  public Setting setting() {
    return new LabFolders().setting(who());
  }

  /** The same session over another lab folder. */
  public Session over(Path folder) {
    CommonOptions other = new CommonOptions();
    other.lab = folder;
    other.json = options.json;
    other.events = options.events;
    other.operator = options.operator;
    other.pinFile = options.pinFile;
    return new Session(around, other);
  }

  /** Who may work in the lab. */
  public People people() {
    return new People(labFolder(), clock(), new SecureRandom());
  }

  /**
   * Refuses whoever may only read, for commands that write into the lab folder but not into its
   * ledger; an open lab asks nobody.
   */
  public void weigher() {
    People people = people();
    if (!people.isOpen() && !LabFolders.signOn(people, who()).right().includes(Right.WEIGH)) {
      throw new Problem.Refused(
          "Only who may weigh may do that.",
          "Nothing was changed.",
          "Ask somebody with the right \"weigh\".");
    }
  }

  /** Refuses whoever is not a supervisor; an open lab asks nobody. */
  public void supervisor() {
    People people = people();
    if (!labExists()) {
      existingBench();
    }
    if (!people.isOpen() && !LabFolders.signOn(people, who()).right().includes(Right.SUPERVISE)) {
      throw new Problem.Refused(
          "Only a supervisor may do that.", "Nothing was changed.", "Ask a supervisor.");
    }
  }

  private Labs.Who who() {
    String operator = options.operator;
    return new Labs.Who(
        operator != null ? operator(operator) : around.user(),
        this::pin,
        around.clock(),
        this::message);
  }

  private static String operator(String given) {
    String bare = given.strip();
    if (bare.isEmpty() || bare.length() > 40 || bare.chars().anyMatch(c -> c < ' ')) {
      throw new Problem.WrongUse("Those are no initials.", "--operator takes 1 to 40 characters.");
    }
    return bare;
  }

  private Optional<char[]> pin() {
    Path file = options.pinFile;
    if (file != null) {
      return Optional.of(firstLine(file).toCharArray());
    }
    Optional<String> set = variable("SILTBENCH_PIN");
    return set.isPresent() ? set.map(String::toCharArray) : console().secret("PIN: ");
  }

  private static String firstLine(Path file) {
    try (var lines = Files.lines(file, StandardCharsets.UTF_8)) {
      return lines.findFirst().orElse("").strip();
    } catch (IOException e) {
      throw new Problem.Outside(
          "The PIN file " + file + " cannot be read.",
          "Nothing was written.",
          "Check --pin-file.",
          e);
    }
  }

  @Override
  public void close() {
    OpenLab open = bench;
    if (open != null) {
      open.close();
    }
  }
}
