package org.siltbench.demo.run;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.siltbench.demo.robot.Answer;
import org.siltbench.demo.robot.Robot;
import org.siltbench.demo.storm.Truths;

/** Oven and desiccator: what the bench is told, and what becomes of the filters. */
final class Ovens {

  private static final String WARM = "104";

  private final Robot robot;
  private final Truths truths;

  Ovens(Robot robot, Truths truths) {
    this.robot = robot;
    this.truths = truths;
  }

  /** Dries clean filters of these batches and lets them cool. */
  void dryClean(List<String> batches) {
    List<Load> loads = new ArrayList<>();
    for (String batch : batches) {
      loads.addAll(start("--batch", batch, "--purpose", "pre"));
    }
    loads.forEach(load -> robot.sleepUntil(load.out()));
    loads.forEach(this::take);
    loads.forEach(load -> robot.sleepUntil(load.cooledUntil()));
    robot.sleepUntil(robot.now().plusMinutes(35));
  }

  /**
   * A desiccator load as the bench planned it.
   *
   * @param cycle the drying cycle
   * @param filters what belongs to it
   * @param out when it should leave the oven
   * @param cooledUntil not to be weighed before
   */
  record Load(String cycle, List<String> filters, OffsetDateTime out, OffsetDateTime cooledUntil) {}

  /** Puts filters into the oven and answers the loads the bench plans. */
  List<Load> start(String... which) {
    List<String> words = new ArrayList<>(List.of("dry", "start"));
    words.addAll(List.of(which));
    words.addAll(List.of("--number", "--temperature", WARM, "--thermometer", "T-2"));
    Answer started = robot.run(words.toArray(new String[0])).done();
    List<Load> loads = new ArrayList<>();
    for (Map<?, ?> load : started.rows("loads")) {
      List<String> filters = Answer.texts(load.get("filters"));
      loads.add(
          new Load(
              Answer.text(started.object(), "cycle"),
              filters,
              OffsetDateTime.parse(Answer.text(load, "out")),
              OffsetDateTime.parse(Answer.text(load, "cooled_until"))));
    }
    return loads;
  }

  /** Takes a load out of the oven, and answers until when it cools. */
  OffsetDateTime take(Load load) {
    robot.sleepUntil(load.out());
    Answer ended =
        robot
            .run(
                "dry",
                "end",
                "--cycle",
                load.cycle(),
                "--filters",
                String.join(",", load.filters()),
                "--temperature",
                WARM,
                "--thermometer",
                "T-2")
            .done();
    truths.dry(load.filters());
    return OffsetDateTime.parse(Answer.text(ended.object(), "cooled_until"));
  }
}
