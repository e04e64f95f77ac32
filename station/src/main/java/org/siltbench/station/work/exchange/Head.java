package org.siltbench.station.work.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.siltbench.calc.id.Scan;
import org.siltbench.station.Problem;

/**
 * The line or two that name the columns, found by their words.
 *
 * @param names a name for each column; two lines are joined
 * @param before lines above that name nothing, such as a title
 * @param body the lines below
 */
record Head(List<String> names, List<Grid.Line> before, List<Grid.Line> body) {

  private static final int LOOKED_AT = 25;

  static Head of(Grid grid, Answers answers) {
    int at = best(grid.lines(), answers);
    if (at < 0) {
      throw new Problem.WrongUse(ExchangeSays.NO_HEAD);
    }
    return at(grid.lines(), at);
  }

  /** The same without any answer; empty where no line is known. */
  static Optional<Head> find(Grid grid) {
    int at = best(grid.lines(), Answers.NONE);
    return at < 0 ? Optional.empty() : Optional.of(at(grid.lines(), at));
  }

  private static Head at(List<Grid.Line> lines, int at) {
    boolean above = at > 0 && isGroups(lines.get(at - 1));
    boolean below = at + 1 < lines.size() && isMore(lines.get(at + 1));
    List<String> names = new ArrayList<>();
    for (int column = 0; column < lines.get(at).cells().size(); column++) {
      String group = above ? group(lines.get(at - 1), column) : "";
      names.add(
          name(group, lines.get(at).cell(column), below ? lines.get(at + 1).cell(column) : ""));
    }
    if (below) {
      fillGroups(lines.get(at), lines.get(at + 1), names);
    }
    int body = at + (below ? 2 : 1);
    return new Head(
        names, lines.subList(0, above ? at - 1 : at), lines.subList(body, lines.size()));
  }

  private static int best(List<Grid.Line> lines, Answers answers) {
    int best = -1;
    int most = 0;
    for (int i = 0; i < Math.min(lines.size(), LOOKED_AT); i++) {
      int known = known(lines, i, answers);
      if (known > most) {
        best = i;
        most = known;
      }
    }
    return best;
  }

  private static int known(List<Grid.Line> lines, int at, Answers answers) {
    int known = 0;
    for (String cell : lines.get(at).cells()) {
      boolean meant = answers.of(cell.strip()).isPresent();
      Optional<Columns.Meaning> meaning = Columns.of(cell);
      known += meant || meaning.isPresent() ? 2 : 0;
      known += meaning.isPresent() && meaning.get().sure() ? 1 : 0;
      known -= isId(cell) ? 10 : 0;
    }
    return known;
  }

  static boolean isId(String cell) {
    Scan scan = Scan.of(cell.strip());
    return scan instanceof Scan.Bare || scan instanceof Scan.Bag;
  }

  /** A line of headings that stretch over several columns. */
  private static boolean isGroups(Grid.Line line) {
    long filled = line.cells().stream().filter(cell -> !cell.isBlank()).count();
    boolean blankBehind = filled > 0 && filled < line.cells().size() && line.cells().size() > 2;
    return blankBehind
        && (filled > 1 || line.cell(0).isEmpty())
        && line.cells().stream().noneMatch(cell -> cell.matches(".*\\d.*"));
  }

  /** A second line of headings: no figures, and no filter. */
  private static boolean isMore(Grid.Line line) {
    return line.cells().stream().noneMatch(Head::isId)
        && line.cells().stream().noneMatch(cell -> cell.matches(".*\\d.*"));
  }

  private static String group(Grid.Line line, int column) {
    for (int i = Math.min(column, line.cells().size() - 1); i >= 0; i--) {
      if (!line.cell(i).isEmpty()) {
        return line.cell(i);
      }
    }
    return "";
  }

  /** With its group where that makes it known, else without. */
  private static String name(String group, String own, String more) {
    String joined = (own + " " + more).strip();
    String grouped = (group + " " + joined).strip();
    if (group.isEmpty() || sure(joined)) {
      return joined;
    }
    return Columns.of(grouped).isPresent() || joined.isEmpty() ? grouped : joined;
  }

  private static boolean sure(String name) {
    return Columns.of(name).map(Columns.Meaning::sure).orElse(false);
  }

  /** A name on the first line that goes on over empty cells, with the parts on the second. */
  private static void fillGroups(Grid.Line first, Grid.Line second, List<String> names) {
    for (int column = 1; column < Math.max(first.cells().size(), second.cells().size()); column++) {
      boolean open = first.cell(column).isEmpty() && !second.cell(column).isEmpty();
      if (column >= names.size()) {
        names.add(second.cell(column));
      }
      if (open) {
        names.set(column, name(group(first, column), "", second.cell(column)));
      }
    }
  }
}
