package org.siltbench.station.work.drying;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.Span;
import org.siltbench.labels.Papers;
import org.siltbench.labels.cycle.CycleCard;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.life.CycleState;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.paper.Imprints;
import org.siltbench.station.work.paper.InPrint;
import org.siltbench.station.work.paper.PaperFolder;

/** The card for the oven door: what stands in it, and when it may be opened. */
public final class DoorCard {

  private DoorCard() {}

  /** Draws the card of a running cycle into the lab's papers; answers the file. */
  public static Path write(OpenLab lab, MethodBook methods, CyclePlan plan) {
    CycleCard card = of(lab, methods, plan);
    return PaperFolder.write(
        lab,
        "oven-" + plan.cycle().id() + ".pdf",
        to -> Papers.cycleCard(card, Imprints.of(lab), to));
  }

  /** The card of a running cycle. */
  public static CycleCard of(Bench bench, MethodBook methods, CyclePlan plan) {
    CycleState cycle = plan.cycle();
    Load first = plan.loads().get(0);
    return new CycleCard(
        cycle.id(),
        cycle.purpose(),
        temperature(bench, methods, cycle),
        cycle.in(),
        plan.earliestOut(),
        first.cooledUntil(),
        first.usefulUntil(),
        bench.operator(),
        dishes(plan));
  }

  private static List<CycleCard.Dish> dishes(CyclePlan plan) {
    List<CycleCard.Dish> dishes = new ArrayList<>();
    for (Load load : plan.loads()) {
      for (String id : load.filters()) {
        String dish = plan.cycle().dishes().getOrDefault(id, "");
        dishes.add(new CycleCard.Dish(dish, InPrint.id(id), "load " + load.number()));
      }
    }
    return dishes;
  }

  private static String temperature(Bench bench, MethodBook methods, CycleState cycle) {
    Purpose purpose = Purpose.of(cycle.purpose());
    return CyclePlan.heated(bench.register(), methods, cycle.inside()).stream()
        .map(Heated::method)
        .distinct()
        .map(method -> text(method, purpose))
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static String text(Method method, Purpose purpose) {
    Span span = purpose.range(method);
    return plain(span.low()) + " to " + plain(span.high()) + " °C";
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
