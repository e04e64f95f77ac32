package org.siltbench.station.command.drying;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.Span;
import org.siltbench.labels.Papers;
import org.siltbench.labels.cycle.CycleCard;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.life.CycleState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.work.drying.DryStart;
import org.siltbench.station.work.drying.Load;
import org.siltbench.station.work.paper.Imprints;
import org.siltbench.station.work.paper.InPrint;
import org.siltbench.station.work.paper.PaperFile;

/** Writes the card for the oven door. */
final class CardFile {

  private CardFile() {}

  static void write(Session session, Bench bench, DryStart.Started started, Path file) {
    CycleCard card = card(session, bench, started);
    PaperFile.write(file, to -> Papers.cycleCard(card, Imprints.of(bench), to));
    session.message("The card for the oven door is " + file + '.');
  }

  private static CycleCard card(Session session, Bench bench, DryStart.Started started) {
    CycleState cycle = started.cycle();
    List<CycleCard.Dish> dishes = new ArrayList<>();
    for (Load load : started.loads()) {
      for (String id : load.filters()) {
        dishes.add(
            new CycleCard.Dish(
                cycle.dishes().getOrDefault(id, ""), InPrint.id(id), "load " + load.number()));
      }
    }
    Load first = started.loads().get(0);
    return new CycleCard(
        cycle.id(),
        cycle.purpose(),
        temperature(session, bench, cycle),
        cycle.in(),
        started.earliestOut(),
        first.cooledUntil(),
        first.usefulUntil(),
        bench.operator(),
        dishes);
  }

  private static String temperature(Session session, Bench bench, CycleState cycle) {
    Stream<Method> methods =
        cycle.inside().stream()
            .flatMap(id -> Filters.find(bench.register(), id).stream())
            .map(FilterState::method)
            .distinct()
            .map(key -> session.methods().inForce(bench.register(), key));
    return methods
        .map(method -> text(range(cycle, method)))
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static Span range(CycleState cycle, Method method) {
    var ignition = method.ignition();
    return cycle.purpose().equals("ignition") && ignition != null
        ? ignition.celsius()
        : method.drying().celsius();
  }

  private static String text(Span span) {
    return plain(span.low()) + " to " + plain(span.high()) + " °C";
  }

  private static String plain(double value) {
    return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
