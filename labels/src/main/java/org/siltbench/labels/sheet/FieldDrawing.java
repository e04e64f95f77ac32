package org.siltbench.labels.sheet;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.siltbench.labels.RoleWords;
import org.siltbench.labels.draw.Cell;
import org.siltbench.labels.draw.Column;
import org.siltbench.labels.draw.Flow;
import org.siltbench.labels.draw.Paper;
import org.siltbench.labels.draw.Table;

/** Draws the field sheet: a table to fill in, then steps, cautions and custody on the back. */
public final class FieldDrawing {

  private static final double ROW = 10;

  private FieldDrawing() {}

  public static void draw(Paper paper, FieldSheet sheet) throws IOException {
    Flow flow = Flow.sideways(paper, "Field sheet, batch " + sheet.batch());
    flow.title("Field sheet", sheet.batchName());
    flow.facts(
        4,
        "Batch",
        sheet.batch(),
        "Trip",
        sheet.trip(),
        "Method",
        sheet.method(),
        "Filters",
        Integer.toString(sheet.lines().size()));
    flow.table(dayLines());
    filters(flow, sheet);
    flow.newPage();
    steps(flow, sheet);
    custody(flow);
    flow.finish();
  }

  private static Table dayLines() {
    return Table.toWrite(
            9,
            Column.left("people", 60),
            Column.left("weather, sky, wind", 50),
            Column.left("river or site state", 50),
            Column.left("vacuum pump or syringe no.", 40),
            Column.left("funnel or cylinder no.", 40),
            Column.left("clock set to", 27))
        .row(Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, Cell.EMPTY);
  }

  private static void filters(Flow flow, FieldSheet sheet) throws IOException {
    Table table =
        Table.toWrite(
            ROW,
            Column.right("use", 8),
            Column.left("filter", 25),
            Column.left("sample\nno.", 15),
            Column.left("site", 20),
            Column.left("collected\ndate and time", 24),
            Column.left("filtered\nfrom", 14),
            Column.left("filtered\nto", 14),
            Column.left(sheet.wholeBottle() ? "whole\nbottle" : "aliquot\nor whole", 13),
            Column.left("portions\nmL", 25),
            Column.left("left\nmL", 12),
            Column.left("left goes\nto", 14),
            Column.left("rinse\nyes, no", 13),
            Column.left("vacuum\nkPa", 13),
            Column.left("gauge\nm", 13),
            Column.left("water\n°C", 12),
            Column.left("conduct.\nµS/cm", 15),
            Column.left("remarks\npair, condition", 30),
            Column.left("by", 11));
    for (FieldSheet.Line line : sheet.lines()) {
      table.row(row(sheet, line));
    }
    flow.heading("Filters in order of use").table(table);
  }

  private static Cell[] row(FieldSheet sheet, FieldSheet.Line line) {
    String words = RoleWords.of(line.role(), line.duplicate());
    Cell[] cells = new Cell[18];
    Arrays.fill(cells, Cell.EMPTY);
    cells[0] = Cell.of(Integer.toString(line.order()));
    cells[1] = words.isEmpty() ? Cell.strong(line.id()) : Cell.over(line.id(), words);
    cells[3] = site(line);
    cells[7] = Cell.of(sheet.wholeBottle() ? "whole" : "");
    return cells;
  }

  private static Cell site(FieldSheet.Line line) {
    String planned = line.planned().isEmpty() ? "" : "plan " + line.planned();
    return Cell.of(String.join("\n", line.site(), planned).strip());
  }

  private static void steps(Flow flow, FieldSheet sheet) throws IOException {
    flow.heading("One filter, step by step");
    List<String> steps = FieldSteps.steps(sheet.wholeBottle());
    for (int i = 0; i < steps.size(); i++) {
      flow.item(Integer.toString(i + 1), steps.get(i));
    }
    flow.heading("Take care");
    for (String caution : FieldSteps.CAUTIONS) {
      flow.item("!", caution);
    }
  }

  private static void custody(Flow flow) throws IOException {
    Table table =
        Table.toWrite(
            ROW,
            Column.left("relinquished by", 50),
            Column.left("received by", 50),
            Column.left("date and time", 40),
            Column.left("bags counted", 26),
            Column.left("seals whole", 26),
            Column.left("temperature °C", 28),
            Column.left("remarks", 47));
    for (int i = 0; i < 4; i++) {
      table.row(Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, Cell.EMPTY);
    }
    flow.heading("Custody: one line for each time the bags change hands").table(table);
  }
}
