package org.siltbench.demo.robot;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Balances;
import org.siltbench.balance.ReadingSource;
import org.siltbench.balance.VirtualTime;
import org.siltbench.balance.practice.Load;
import org.siltbench.balance.practice.PracticeSetup;
import org.siltbench.balance.practice.PracticeSource;
import org.siltbench.balance.practice.Room;
import org.siltbench.station.command.Console;
import org.siltbench.station.command.LabFolders;
import org.siltbench.station.command.Main;
import org.siltbench.station.command.Program;
import org.siltbench.station.command.Surroundings;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;

/**
 * One bench worked by a robot, in one process and on one simulated clock: the commands are the real
 * ones, the lab folder is real, the bytes of the balance cross a real pseudo-terminal where the
 * system offers one; only time and the physics are simulated.
 */
public final class Robot {

  private final Path lab;
  private final ZoneOffset zone;
  private final VirtualTime time;
  private final PracticeSetup.Via via;
  private final Room room;
  private final RobotHand hand;
  private final SplittableRandom chance;
  private final LabFolders labs;

  /**
   * A robot at a bench.
   *
   * @param lab the lab folder
   * @param begin when its first day begins
   * @param seed where all chance comes from
   * @param via whether the balance's bytes cross a pseudo-terminal
   * @param loads what lies on the pan when the bench asks for this
   */
  public Robot(
      Path lab,
      OffsetDateTime begin,
      long seed,
      PracticeSetup.Via via,
      Room room,
      Function<String, Load> loads) {
    this.lab = lab;
    this.zone = begin.getOffset();
    this.time = new VirtualTime(begin.toInstant());
    this.via = via;
    this.room = room;
    this.hand = new RobotHand(loads);
    this.chance = new SplittableRandom(seed);
    this.labs = new LabFolders(new SplittableRandom(chance.nextLong()));
  }

  /** The lab folder. */
  public Path lab() {
    return lab;
  }

  /** The simulated now. */
  public OffsetDateTime now() {
    return time.instant().atOffset(zone);
  }

  /** Lets time pass until a moment; does nothing if that is past. */
  public void sleepUntil(OffsetDateTime moment) {
    Duration gap = Duration.between(time.instant(), moment.toInstant());
    if (!gap.isNegative()) {
      time.advance(gap);
    }
  }

  /** Types one command and reads its answer. */
  public Answer run(String... words) {
    return run(List.of(), words);
  }

  /**
   * Types one command with lines on its standard input, such as scanned bags.
   *
   * @param input the lines
   */
  public Answer run(List<String> input, String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--lab", lab.toString(), "--json", "--events"));
    List<String> messages = new ArrayList<>();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    String lines = input.isEmpty() ? "" : String.join("\n", input) + '\n';
    Console console =
        Console.over(
            new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)),
            out,
            new Lines(line -> heard(line, messages::add)));
    int status = new Program(around(console)).run(all.toArray(new String[0]));
    return new Answer(List.of(words), status, document(out), messages);
  }

  private Surroundings around(Console console) {
    return new Surroundings(
        console,
        time.withZone(zone),
        Map.of(),
        lab,
        "AF",
        labs,
        (spec, formats) -> open(formats),
        Main.offered());
  }

  private ReadingSource open(Path formats) throws IOException {
    PracticeSource source =
        new Balances(time, formats)
            .practice(PracticeSetup.seeded(chance.nextLong()).in(room).via(via).on(time));
    hand.at(source.hand());
    return source;
  }

  private void heard(String line, Consumer<String> messages) {
    Map<String, @Nullable Object> event = event(line);
    if ("problem".equals(event.get("event"))) {
      messages.accept(String.valueOf(event.get("what")));
    } else if (event.containsKey("event")) {
      hand.see(event);
    } else if (!line.isBlank()) {
      messages.accept(line);
    }
  }

  private static Map<String, @Nullable Object> event(String line) {
    if (!line.startsWith("{")) {
      return Map.of();
    }
    try {
      return Json.object(line);
    } catch (NotJson e) {
      return Map.of();
    }
  }

  private static @Nullable Object document(ByteArrayOutputStream out) {
    String text = out.toString(StandardCharsets.UTF_8);
    if (text.isBlank()) {
      return null;
    }
    try {
      return Json.read(text.strip());
    } catch (NotJson e) {
      throw new IllegalStateException("standard output is not one JSON document: " + text, e);
    }
  }

  /** The instant of the simulated now. */
  public Instant instant() {
    return time.instant();
  }
}
