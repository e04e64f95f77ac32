package org.siltbench.demo.run;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.siltbench.balance.practice.PracticeSetup;
import org.siltbench.balance.practice.Room;
import org.siltbench.demo.robot.Answer;
import org.siltbench.demo.robot.Robot;
import org.siltbench.demo.run.Preparation.Issued;
import org.siltbench.demo.storm.FieldDay;
import org.siltbench.demo.storm.FieldNotes;
import org.siltbench.demo.storm.Storm;
import org.siltbench.demo.storm.Taken;
import org.siltbench.demo.storm.Truths;

/** The whole campaign: from clean filters to the comparison with the truth. */
final class Campaign {

  private static final OffsetDateTime BEGIN = OffsetDateTime.parse("2026-10-12T08:00:00+02:00");
  private static final OffsetDateTime RAIN = OffsetDateTime.parse("2026-10-14T05:20:00+02:00");
  private static final OffsetDateTime FIRST = OffsetDateTime.parse("2026-10-14T06:00:00+02:00");
  private static final OffsetDateTime BACK = OffsetDateTime.parse("2026-10-15T08:00:00+02:00");

  private final Path out;
  private final Story story;
  private final Robot robot;
  private final Truths truths;
  private final Announced announced = new Announced();
  private final long fieldSeed;

  Campaign(Path out, long seed, PracticeSetup.Via via, Story story) {
    SplittableRandom seeds = new SplittableRandom(seed);
    this.out = out;
    this.story = story;
    this.truths = new Truths(seeds.nextLong(), CampaignMethod.HANDLING_MG);
    this.robot =
        new Robot(out.resolve("lab"), BEGIN, seeds.nextLong(), via, Room.CALM, truths::asked);
    this.fieldSeed = seeds.nextLong();
  }

  /**
   * What came of it.
   *
   * @param comparison results against the truth
   * @param faults each deliberate fault, and whether the bench flagged it
   * @param announced masses announced
   * @param lost announced masses that the ledger does not hold
   */
  record Outcome(Comparison comparison, Map<String, Boolean> faults, int announced, int lost) {}

  Outcome run() throws IOException {
    Ovens ovens = new Ovens(robot, truths);
    Issued issued = new Preparation(robot, truths, announced, ovens, out, story).run();
    story.chapter("The storm");
    Storm storm = new Storm(RAIN);
    FieldDay day = new FieldDay(storm, truths, CampaignMethod.VOLUMES, fieldSeed);
    List<Taken> notes = day.work(FIRST, issued.bags());
    story.tell(notes.size() + " filters at two sites, every quarter of an hour for six hours");
    robot.sleepUntil(BACK);
    AfterField after =
        new AfterField(robot, truths, announced, ovens, out, story, issued, day.faults());
    after.receive(notes, new FieldNotes(storm));
    AfterField.Seen seen = after.weigh(notes);
    Comparison comparison = Comparison.of(results(), truths, day.faults());
    return new Outcome(
        comparison, faults(seen, comparison, day), announced.count(), announced.lost(robot.lab()));
  }

  private Answer results() {
    story.chapter("Results and papers");
    Answer results =
        robot
            .run(
                "results", "--batch", Preparation.BATCH, "--out", out.resolve("results").toString())
            .done();
    robot
        .run(
            "logsheet",
            "--batch",
            Preparation.BATCH,
            "--out",
            out.resolve("log-sheet.pdf").toString())
        .done();
    Answer verified = robot.run("verify").done();
    robot.run("rebuild").done();
    story.tell("the ledger is whole: " + Answer.text(verified.object(), "entries") + " entries");
    return results;
  }

  private static Map<String, Boolean> faults(
      AfterField.Seen seen, Comparison comparison, FieldDay day) {
    Map<String, Boolean> faults = new LinkedHashMap<>();
    faults.put("a bag that never returns", seen.missing);
    faults.put("a bag of another batch at the balance", seen.strangeBag);
    faults.put("a filter weighed before it has cooled", seen.tooEarly);
    faults.put("a filter weighed while it takes up moisture", seen.damp);
    faults.put("a filter that needs two more dryings", seen.slow);
    faults.put(
        "a torn filter that lost a piece", comparison.has(day.faults().torn(), "residue-lost"));
    return faults;
  }
}
