package org.siltbench.demo.run;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.siltbench.demo.robot.Answer;
import org.siltbench.demo.robot.Robot;
import org.siltbench.demo.run.Preparation.Issued;
import org.siltbench.demo.storm.Faults;
import org.siltbench.demo.storm.FieldNotes;
import org.siltbench.demo.storm.Taken;
import org.siltbench.demo.storm.Truths;

/**
 * After the trip: bags and notes come in, filters are dried and weighed until they are constant.
 */
final class AfterField {

  private static final int MOST_ROUNDS = 6;

  private final Robot robot;
  private final Truths truths;
  private final Announced announced;
  private final Ovens ovens;
  private final Path out;
  private final Story story;
  private final Issued issued;
  private final Faults faults;
  private final Seen seen = new Seen();

  AfterField(
      Robot robot,
      Truths truths,
      Announced announced,
      Ovens ovens,
      Path out,
      Story story,
      Issued issued,
      Faults faults) {
    this.robot = robot;
    this.truths = truths;
    this.announced = announced;
    this.ovens = ovens;
    this.out = out;
    this.story = story;
    this.issued = issued;
    this.faults = faults;
  }

  /** Which of the deliberate faults the bench noticed while they happened. */
  static final class Seen {
    boolean missing;
    boolean strangeBag;
    boolean tooEarly;
    boolean damp;
    boolean slow;
  }

  /** Takes the bags in. */
  void receive(List<Taken> notes, FieldNotes table) throws IOException {
    story.chapter("Back in the lab");
    Path file = out.resolve("field-notes.csv");
    table.fillIn(out.resolve("field-sheet.csv"), notes, file);
    List<String> scans =
        notes.stream()
            .map(Taken::filter)
            .filter(id -> !id.equals(faults.lost()))
            .map(this::code)
            .toList();
    Path scanned = out.resolve("scans.txt");
    Files.write(scanned, scans, StandardCharsets.UTF_8);
    robot
        .run(
            "custody",
            "--trip",
            Preparation.TRIP,
            "--relinquished",
            "JR",
            "--received",
            "AF",
            "--bags",
            Integer.toString(scans.size()),
            "--seals",
            "intact")
        .done();
    Answer answer =
        robot
            .run("receive", "--from", file.toString(), "--scans", scanned.toString(), "--go-on")
            .ended(1);
    seen.missing =
        Answer.texts(answer.object().get("notes_without_bags")).equals(List.of(faults.lost()));
    story.tell(scans.size() + " bags are back, 1 has notes but did not return: " + faults.lost());
    unusedBack(answer);
  }

  /** The bags with nothing written beside them go back to stock. */
  private void unusedBack(Answer received) {
    List<String> unused = Answer.texts(received.object().get("unused"));
    if (!unused.isEmpty()) {
      robot
          .run(
              "issue",
              "--back",
              "--batch",
              Preparation.BATCH,
              "--trip",
              Preparation.TRIP,
              "--filters",
              String.join(",", unused))
          .done();
      story.tell(unused.size() + " spares came back unused");
    }
  }

  /** The text a scanner reads off this filter's bag. */
  private String code(String filter) {
    return issued.codes().getOrDefault(filter, filter);
  }

  /** Dries and weighs until nothing is left to dry, and answers what was noticed. */
  Seen weigh(List<Taken> notes) {
    story.chapter("Dry, cool, weigh, again");
    List<String> due = new ArrayList<>(notes.stream().map(Taken::filter).toList());
    due.remove(faults.lost());
    for (String role : List.of("method-blank", "control")) {
      due.addAll(issued.bench().getOrDefault(role, List.of()));
    }
    List<String> blanks = issued.bench().getOrDefault("method-blank", List.of());
    blanks.forEach(id -> truths.change(id, filter -> filter.filtered(0, 0)));
    for (int round = 1; round <= MOST_ROUNDS && !due.isEmpty(); round++) {
      List<String> again = round(round, due);
      story.tell(
          "round " + round + ": " + due.size() + " weighed, " + again.size() + " to dry again");
      seen.slow |= round >= 3 && again.contains(faults.slow());
      due = again;
    }
    if (!due.isEmpty()) {
      throw new IllegalStateException("never constant: " + due);
    }
    return seen;
  }

  private List<String> round(int round, List<String> due) {
    List<String> again = new ArrayList<>();
    for (Ovens.Load load : ovens.start("--filters", String.join(",", due))) {
      OffsetDateTime cool = ovens.take(load);
      if (round == 1) {
        tooEarly(load);
      }
      robot.sleepUntil(cool.plusMinutes(1));
      again.addAll(load(round, load));
    }
    return again;
  }

  /** Somebody cannot wait: the first filter straight from the oven. */
  private void tooEarly(Ovens.Load load) {
    Answer refused = postweigh(List.of(load.filters().get(0))).ended(1);
    seen.tooEarly |= refused.rows("weighings").isEmpty() && !refused.rows("refused").isEmpty();
  }

  private List<String> load(int round, Ovens.Load load) {
    if (round == 1 && load.filters().contains(faults.damp())) {
      damp();
    }
    if (round == 1 && !seen.strangeBag) {
      stranger();
    }
    Answer weighed = postweigh(load.filters()).done();
    return weighed.rows("weighings").stream()
        .filter(row -> !Answer.text(row, "verdict").equals("constant"))
        .map(row -> Answer.text(row, "filter"))
        .toList();
  }

  /** One filter lay open in damp air before it came to the balance. */
  private void damp() {
    truths.damp(faults.damp(), true);
    Answer refused = postweigh(List.of(faults.damp())).ended(1);
    truths.damp(faults.damp(), false);
    seen.damp =
        refused.rows("refused").stream()
            .anyMatch(row -> Answer.text(row, "why").contains("since the desiccator"));
  }

  /** A bag of another batch got into the box. */
  private void stranger() {
    Answer refused = postweigh(List.of(issued.stranger())).ended(1);
    seen.strangeBag = refused.rows("weighings").isEmpty() && !refused.rows("refused").isEmpty();
  }

  private Answer postweigh(List<String> filters) {
    Answer answer =
        robot.run(
            filters.stream().map(this::code).toList(),
            "postweigh",
            "--balance",
            Preparation.BALANCE,
            "--batch",
            Preparation.BATCH,
            "--weight",
            Preparation.WEIGHT);
    announced.note(answer);
    return answer;
  }
}
