package org.siltbench.station.work.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.siltbench.station.said.Said;

/** Takes each column for one of the receipt table, and doubts where it could be another. */
final class Headings {

  private final Head head;
  private final Answers answers;
  private final List<Doubt> doubts;
  private final List<Heading> out = new ArrayList<>();

  private Headings(Head head, Answers answers, List<Doubt> doubts) {
    this.head = head;
    this.answers = answers;
    this.doubts = doubts;
  }

  static List<Heading> of(Head head, Answers answers, List<Doubt> doubts) {
    Headings headings = new Headings(head, answers, doubts);
    for (int i = 0; i < head.names().size(); i++) {
      headings.out.add(headings.heading(i, head.names().get(i)));
    }
    headings.filterByContent();
    headings.oneMeaningOnce();
    headings.volumeThere();
    return List.copyOf(headings.out);
  }

  private Heading heading(int place, String name) {
    String column = column(name);
    return new Heading(place, name, column, unit(place, name, column));
  }

  private String column(String name) {
    Optional<String> said = name.isEmpty() ? Optional.empty() : answers.of(name);
    if (said.isPresent()) {
      return said.get();
    }
    Optional<Columns.Meaning> meaning = Columns.of(name);
    if (meaning.isEmpty()) {
      return unknown(name);
    }
    if (!meaning.get().sure()) {
      String likely = meaning.get().column();
      doubts.add(
          new Doubt(
              0,
              name,
              name,
              Said.of(ExchangeSays.DOUBT_COLUMN, name, likely),
              List.of(name + "=" + likely, name + "=none")));
    }
    return meaning.get().column();
  }

  /** A column nobody knows is left out; one that could be a volume is asked about. */
  private String unknown(String name) {
    if (Units.fits(Columns.unit(name), "volume_ml")) {
      doubts.add(
          new Doubt(
              0,
              name,
              name,
              Said.of(ExchangeSays.DOUBT_VOLUME, name),
              List.of(name + "=volume_ml", name + "=left_ml", name + "=none")));
    }
    return Columns.NONE;
  }

  private String unit(int place, String name, String column) {
    List<String> choices = Units.choices(column);
    if (choices.isEmpty()) {
      return "";
    }
    Optional<String> said = answers.of("unit:" + name);
    String unit = said.orElse(Columns.unit(name));
    if (Units.fits(unit, column)) {
      return unit;
    }
    if (onlyMillilitres(place, column)) {
      return "mL";
    }
    if (filled(place) && !everyCellSays(place, column)) {
      doubts.add(
          new Doubt(
              0,
              name,
              unit,
              Said.of(ExchangeSays.DOUBT_NO_UNIT, name),
              choices.stream().map(choice -> "unit:" + name + "=" + choice).toList()));
    }
    return "";
  }

  private boolean filled(int place) {
    return head.body().stream().anyMatch(line -> !line.cell(place).isEmpty());
  }

  private boolean everyCellSays(int place, String column) {
    return head.body().stream()
        .map(line -> line.cell(place))
        .filter(cell -> !cell.isEmpty())
        .allMatch(cell -> Units.fits(CellUnit.of(cell), column));
  }

  /** More than ten litres go through no filter: then the numbers are millilitres. */
  private boolean onlyMillilitres(int place, String column) {
    if (!Units.choices(column).contains("mL") || column.equals("left_ml")) {
      return false;
    }
    List<String> cells =
        head.body().stream().map(line -> line.cell(place)).filter(c -> !c.isEmpty()).toList();
    return !cells.isEmpty()
        && cells.stream().allMatch(c -> c.matches("[1-9]\\d{1,3}") && !c.equals("10"));
  }

  /** Where no heading means the filter: the column in which the IDs stand. */
  private void filterByContent() {
    if (out.stream().anyMatch(heading -> heading.column().equals("filter"))) {
      return;
    }
    for (Heading heading : List.copyOf(out)) {
      long ids = head.body().stream().filter(l -> Head.isId(l.cell(heading.place()))).count();
      if (2 * ids > head.body().size()) {
        out.set(heading.place(), new Heading(heading.place(), heading.name(), "filter", ""));
        doubts.removeIf(doubt -> doubt.line() == 0 && doubt.column().equals(heading.name()));
        return;
      }
    }
    doubts.add(
        new Doubt(0, "", "", Said.of(ExchangeSays.DOUBT_NO_FILTERS), List.of("NAME=filter")));
  }

  private void oneMeaningOnce() {
    Map<String, Heading> seen = new HashMap<>();
    for (Heading heading : out) {
      Heading first = seen.putIfAbsent(heading.column(), heading);
      if (first != null && !heading.column().equals(Columns.NONE)) {
        doubts.add(
            new Doubt(
                0,
                heading.name(),
                heading.name(),
                Said.of(
                    ExchangeSays.DOUBT_TWO_COLUMNS,
                    first.place() + 1,
                    first.name(),
                    heading.place() + 1,
                    heading.name(),
                    heading.column()),
                first.name().equalsIgnoreCase(heading.name())
                    ? List.of()
                    : List.of(first.name() + "=none", heading.name() + "=none")));
      }
    }
  }

  private void volumeThere() {
    boolean there =
        out.stream()
            .anyMatch(h -> h.column().equals("volume_ml") || h.column().equals("portions_ml"));
    if (!there && answers.of("volume_ml").isEmpty()) {
      doubts.add(
          new Doubt(
              0,
              "",
              "",
              Said.of(ExchangeSays.DOUBT_NO_VOLUME),
              List.of("NAME=volume_ml", "volume_ml=none")));
    }
  }
}
