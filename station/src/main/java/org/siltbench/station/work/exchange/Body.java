package org.siltbench.station.work.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.siltbench.station.said.Said;

/** Reads the lines below the headings. */
final class Body {

  static final Set<String> NUMBERS =
      Set.of(
          "volume_ml",
          "portions_ml",
          "left_ml",
          "volume_u_ml",
          "gauge_m",
          "water_c",
          "conductivity_us_cm",
          "filter_order");
  static final Set<String> MOMENTS = Set.of("collected", "filtered_from", "filtered_to");

  private final List<Heading> headings;
  private final List<Grid.Line> body;
  private final Answers answers;
  private final List<org.siltbench.station.said.Words> notes;
  private final List<Doubt> doubts;

  Body(
      List<Heading> headings,
      List<Grid.Line> body,
      Answers answers,
      List<org.siltbench.station.said.Words> notes,
      List<Doubt> doubts) {
    this.headings = headings;
    this.body = body;
    this.answers = answers;
    this.notes = notes;
    this.doubts = doubts;
  }

  List<Preview.Line> read() {
    List<Grid.Line> lines = body.stream().filter(this::isKept).toList();
    Dates dates =
        Dates.of(
            dateCells(lines).toList(),
            headings.stream().filter(Body::hasDates).map(Heading::name).toList(),
            answers.of("dates"));
    order(dates, lines);
    Numbers numbers = Numbers.of(numberCells(lines).toList(), answers.of("decimals"));
    List<Preview.Line> out = new ArrayList<>();
    for (Grid.Line line : lines) {
      if (isFilter(line)) {
        out.add(new LineReader(headings, new Moments(dates), dates, numbers, line, doubts).read());
      }
    }
    return out;
  }

  private boolean isKept(Grid.Line line) {
    if (answers.skips(line.number())) {
      notes.add(Said.of(ExchangeSays.NOTE_LEFT_OUT, line.number()));
      return false;
    }
    return true;
  }

  private boolean isFilter(Grid.Line line) {
    for (int i = headings.size(); i < line.cells().size(); i++) {
      if (!line.cell(i).isEmpty()) {
        skip(line, line.cell(i), Said.of(ExchangeSays.DOUBT_MORE_CELLS));
        return false;
      }
    }
    Optional<Heading> filter =
        headings.stream().filter(h -> h.column().equals("filter")).findFirst();
    String id = filter.map(h -> line.cell(h.place())).orElse("");
    if (filter.isPresent() && !Head.isId(id)) {
      skip(
          line,
          id,
          id.isEmpty()
              ? Said.of(ExchangeSays.DOUBT_NO_FILTER)
              : Said.of(ExchangeSays.DOUBT_NOT_FILTER, id));
      return false;
    }
    return filter.isPresent();
  }

  private void skip(Grid.Line line, String text, Said what) {
    doubts.add(new Doubt(line.number(), "", text, what, List.of("skip=" + line.number())));
  }

  private static boolean hasDates(Heading heading) {
    return heading.column().equals(Columns.DATE) || MOMENTS.contains(heading.column());
  }

  private Stream<String> dateCells(List<Grid.Line> lines) {
    return lines.stream()
        .flatMap(
            line ->
                headings.stream()
                    .filter(Body::hasDates)
                    .map(heading -> Moments.datePart(line.cell(heading.place()))));
  }

  private Stream<String> numberCells(List<Grid.Line> lines) {
    return lines.stream()
        .flatMap(
            line ->
                headings.stream()
                    .filter(heading -> NUMBERS.contains(heading.column()))
                    .map(heading -> CellUnit.without(line.cell(heading.place()))))
        .flatMap(cell -> Stream.of(cell.split("[+–]|\\.\\.|(?<=\\d) ?-")));
  }

  /** One doubt for all dates whose order is open. */
  private void order(Dates dates, List<Grid.Line> lines) {
    Optional<String> first = dateCells(lines).filter(Dates::isFigures).findFirst();
    if (first.isEmpty() || dates.orders().size() == 1) {
      return;
    }
    List<String> settle = dates.orders().stream().map(order -> "dates=" + order.word()).toList();
    doubts.add(
        new Doubt(
            0,
            "",
            first.get(),
            settle.isEmpty()
                ? Said.of(ExchangeSays.DOUBT_ORDERS)
                : Said.of(ExchangeSays.DOUBT_ORDER, first.get(), firsts(dates)),
            settle));
  }

  private static Said firsts(Dates dates) {
    return dates.orders().stream()
        .map(order -> Said.of(ExchangeSays.valueOf("FIRST_" + order.name())))
        .reduce((a, b) -> Said.of(ExchangeSays.OR, a, b))
        .orElseThrow();
  }
}
