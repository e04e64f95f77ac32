package org.siltbench.demo.run;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.demo.robot.Answer;
import org.siltbench.demo.robot.Robot;
import org.siltbench.demo.storm.Bags;
import org.siltbench.demo.storm.Truths;

/** Before the trip: the records of the bench, the lot, the batch, clean masses, bags, papers. */
final class Preparation {

  static final String BATCH = "alder-fork-storm";
  static final String TRIP = "storm-1";
  static final String BALANCE = "serial:/dev/practice-balance";
  static final String WEIGHT = "E100";

  private final Robot robot;
  private final Truths truths;
  private final Announced announced;
  private final Ovens ovens;
  private final Path out;
  private final Story story;

  Preparation(Robot robot, Truths truths, Announced announced, Ovens ovens, Path out, Story story) {
    this.robot = robot;
    this.truths = truths;
    this.announced = announced;
    this.ovens = ovens;
    this.out = out;
    this.story = story;
  }

  /** Does it all and answers the bags that go out. */
  Issued run() throws IOException {
    bench();
    List<String> filters = batch();
    weigh(filters.size());
    Map<String, String> codes = papers();
    return issue(codes);
  }

  /**
   * What went out.
   *
   * @param bags by what they were planned for
   * @param bench filters that stay in the lab, by role
   * @param codes the text in the code of each bag label
   * @param stranger a bag of another batch
   */
  record Issued(
      Bags bags, Map<String, List<String>> bench, Map<String, String> codes, String stranger) {}

  private void bench() throws IOException {
    story.chapter("The bench");
    robot.run("lab", "new", "--practice", "--name", "Alder Fork practice bench").done();
    CampaignMethod.write(robot.lab());
    robot
        .run(
            "balance",
            "describe",
            "--name",
            "AF-balance",
            "--balance",
            BALANCE,
            "--serial",
            "PB-1",
            "--resolution",
            "0.00001",
            "--capacity",
            "60",
            "--calibrated",
            "2026-04-01",
            "--due",
            "2027-04-01",
            "--linearity",
            "0.01",
            "--eccentricity",
            "0.01")
        .done();
    robot
        .run(
            "weight",
            "--name",
            WEIGHT,
            "--nominal",
            "0.1",
            "--certified",
            "0.100003",
            "--U",
            "0.005",
            "--certificate",
            "PC-17",
            "--due",
            "2027-06-01")
        .done();
    truths.weight(WEIGHT, Mass.ofMilligrams("100.003"));
    robot.run("room", "--temperature", "21.4", "--pressure", "1008", "--humidity", "41").done();
    story.tell("balance, check weight and room are on record");
  }

  private List<String> batch() throws IOException {
    story.chapter("The batch");
    robot
        .run(
            "lot",
            "new",
            "--name",
            "GF-0726",
            "--maker-lot",
            "invented",
            "--material",
            "glass fibre, no binder",
            "--pore",
            "1.2",
            "--diameter",
            "47",
            "--washed")
        .done();
    robot.run("lot", "test", "--lot", "GF-0726", "--losses", "0.05,0.08,0.02").done();
    robot
        .run(
            "batch",
            "new",
            "--name",
            BATCH,
            "--lot",
            "GF-0726",
            "--method",
            CampaignMethod.KEY,
            "--count",
            "66",
            "--spares",
            "10",
            "--field-blanks",
            "2",
            "--trip-blanks",
            "1",
            "--method-blanks",
            "3",
            "--controls",
            "2")
        .done();
    robot
        .run(
            "batch",
            "new",
            "--name",
            "another",
            "--lot",
            "GF-0726",
            "--method",
            CampaignMethod.KEY,
            "--count",
            "1")
        .done();
    List<String> filters = new ArrayList<>();
    for (String name : List.of(BATCH, "another")) {
      filters(name).values().forEach(filters::addAll);
    }
    filters.forEach(truths::prepare);
    story.tell(filters.size() - 1 + " filters have an ID");
    return filters;
  }

  /** Filter IDs of a batch by role. */
  private Map<String, List<String>> filters(String batch) {
    Map<String, List<String>> byRole = new LinkedHashMap<>();
    for (Map<?, ?> one : Answer.objects(robot.run("batch", "list").done().document())) {
      if (Answer.text(one, "batch").equals(batch)) {
        for (Map<?, ?> filter : Answer.objects(one.get("filters"))) {
          byRole
              .computeIfAbsent(Answer.text(filter, "role"), role -> new ArrayList<>())
              .add(Answer.text(filter, "filter"));
        }
      }
    }
    return byRole;
  }

  private void weigh(int count) {
    story.chapter("Clean masses");
    for (int round = 1; round <= 2; round++) {
      ovens.dryClean(List.of(BATCH, "another"));
      for (String batch : List.of(BATCH, "another")) {
        Answer weighed =
            robot
                .run(
                    "preweigh",
                    "--batch",
                    batch,
                    "--balance",
                    BALANCE,
                    "--weight",
                    WEIGHT,
                    "--repeat",
                    "6")
                .done();
        announced.note(weighed);
      }
      story.tell("round " + round + ": " + count + " filters weighed, one in six twice");
    }
  }

  private Map<String, String> papers() {
    Map<String, String> codes = new LinkedHashMap<>();
    for (String batch : List.of(BATCH, "another")) {
      Answer labels =
          robot
              .run(
                  "labels",
                  "--batch",
                  batch,
                  "--media",
                  "roll-50x25",
                  "--out",
                  out.resolve("bag-labels" + (batch.equals(BATCH) ? "" : "-2") + ".pdf").toString())
              .done();
      labels
          .rows("labels")
          .forEach(row -> codes.put(Answer.text(row, "filter"), Answer.text(row, "code")));
    }
    story.tell(codes.size() + " bag labels drawn");
    return codes;
  }

  private Issued issue(Map<String, String> codes) {
    story.chapter("Out to the stream");
    announced.note(robot.run("audit", "--batch", BATCH, "--balance", BALANCE).done());
    robot
        .run(
            "fieldsheet",
            "--batch",
            BATCH,
            "--out",
            out.resolve("field-sheet.pdf").toString(),
            "--csv",
            out.resolve("field-sheet.csv").toString())
        .done();
    robot.run("issue", "--batch", BATCH, "--trip", TRIP, "--to", "JR").done();
    Map<String, List<String>> byRole = filters(BATCH);
    List<String> samples = byRole.getOrDefault("sample", List.of());
    List<String> spares = byRole.getOrDefault("spare", List.of());
    Bags bags =
        new Bags(
            samples,
            spares,
            byRole.getOrDefault("field-blank", List.of()),
            byRole.getOrDefault("trip-blank", List.of()));
    int count = samples.size() + spares.size() + 3;
    robot
        .run(
            "custody",
            "--trip",
            TRIP,
            "--relinquished",
            "AF",
            "--received",
            "JR",
            "--bags",
            Integer.toString(count),
            "--seals",
            "intact")
        .done();
    story.tell(count + " bags are on their way");
    String stranger = filters("another").getOrDefault("sample", List.of("")).get(0);
    return new Issued(bags, byRole, codes, stranger);
  }
}
