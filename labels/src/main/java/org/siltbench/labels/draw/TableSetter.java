package org.siltbench.labels.draw;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** Sets one table into a flow, row by row, repeating its heads on every page. */
final class TableSetter {

  private static final double PAD_X = 1.1;

  /** More room where a left-aligned column follows a right-aligned one. */
  private static final double PAD_AFTER_RIGHT = 3;

  private static final double PAD_Y = 0.9;
  private static final double RULE = 0.35;
  private static final double HAIR = 0.12;
  private static final double STRIKE = 0.28;

  private final Flow flow;
  private final Paper paper;
  private final Table table;
  private final double[] widths;

  private record SetLine(String text, Type type, boolean struck) {}

  TableSetter(Flow flow, Table table) {
    this.flow = flow;
    this.paper = flow.paper();
    this.table = table;
    double all = table.columns().stream().mapToDouble(Column::share).sum();
    this.widths =
        table.columns().stream().mapToDouble(c -> c.share() * flow.width() / all).toArray();
  }

  void set() throws IOException {
    paper.begin(StandardStructureTypes.TABLE);
    flow.keep(headHeight() + (table.rows().isEmpty() ? 0 : height(table.rows().get(0))));
    head(true);
    for (List<Cell> row : table.rows()) {
      double tall = height(row);
      if (!flow.fits(tall)) {
        close();
        flow.newPage();
        paper.decorate(() -> head(false));
      }
      row(row, tall);
    }
    close();
    paper.end();
  }

  private void close() throws IOException {
    flow.page().line(flow.left(), flow.y(), flow.right(), flow.y(), RULE, Ink.BLACK);
  }

  private double headHeight() {
    double most = 0;
    for (int i = 0; i < widths.length; i++) {
      most = Math.max(most, headLines(i).size() * Type.COLUMN.leading());
    }
    return most + 2 * PAD_Y;
  }

  private List<String> headLines(int column) {
    return Lines.wrap(paper, table.columns().get(column).head(), Type.COLUMN, room(column));
  }

  private void head(boolean tagged) throws IOException {
    double top = flow.y();
    double tall = headHeight();
    Page page = flow.page();
    page.line(flow.left(), top, flow.right(), top, RULE, Ink.BLACK);
    begin(tagged, StandardStructureTypes.TR);
    double x = flow.left();
    for (int i = 0; i < widths.length; i++) {
      begin(tagged, StandardStructureTypes.TH);
      List<String> lines = headLines(i);
      double y = top + tall - PAD_Y - lines.size() * Type.COLUMN.leading();
      for (String line : lines) {
        y += Type.COLUMN.leading();
        put(x, y - 0.7, i, line, Type.COLUMN);
      }
      end(tagged);
      x += widths[i];
    }
    end(tagged);
    flow.down(tall);
    uprights(top, tall);
    page.line(flow.left(), flow.y(), flow.right(), flow.y(), 0.2, Ink.BLACK);
  }

  private void begin(boolean tagged, String type) {
    if (tagged) {
      paper.begin(type);
    }
  }

  private void end(boolean tagged) {
    if (tagged) {
      paper.end();
    }
  }

  private void row(List<Cell> row, double tall) throws IOException {
    double top = flow.y();
    double x = flow.left();
    paper.begin(StandardStructureTypes.TR);
    for (int i = 0; i < widths.length; i++) {
      paper.begin(StandardStructureTypes.TD);
      cell(x, top, i, row.get(i));
      paper.end();
      x += widths[i];
    }
    paper.end();
    flow.down(tall);
    uprights(top, tall);
    flow.page().line(flow.left(), flow.y(), flow.right(), flow.y(), HAIR, Ink.RULE);
  }

  private void cell(double x, double top, int column, Cell cell) throws IOException {
    double y = top + PAD_Y + 0.1;
    for (SetLine line : lines(column, cell)) {
      double base = y + line.type().capital() + 0.25;
      put(x, base, column, line.text(), line.type());
      if (line.struck()) {
        strike(x, base, column, line);
      }
      y += line.type().leading();
    }
  }

  private void strike(double x, double base, int column, SetLine line) throws IOException {
    double w = paper.width(line.text(), line.type());
    double from = start(x, column, w);
    double y = base - line.type().capital() / 2;
    flow.page().line(from - 0.4, y, from + w + 0.4, y, STRIKE, Ink.BLACK);
  }

  private void put(double x, double base, int column, String text, Type type) throws IOException {
    flow.page().text(start(x, column, paper.width(text, type)), base, text, type);
  }

  private double start(double x, int column, double w) {
    return switch (table.columns().get(column).align()) {
      case LEFT -> x + padLeft(column);
      case RIGHT -> x + widths[column] - PAD_X - w;
      case CENTRE -> x + (widths[column] - w) / 2;
    };
  }

  private double padLeft(int column) {
    List<Column> columns = table.columns();
    boolean afterRight =
        column > 0
            && columns.get(column).align() == Column.Align.LEFT
            && columns.get(column - 1).align() == Column.Align.RIGHT;
    return afterRight && !table.ruled() ? PAD_AFTER_RIGHT : PAD_X;
  }

  private double room(int column) {
    return widths[column] - padLeft(column) - PAD_X;
  }

  private void uprights(double top, double tall) throws IOException {
    if (!table.ruled()) {
      return;
    }
    double x = flow.left();
    for (int i = 0; i <= widths.length; i++) {
      boolean edge = i == 0 || i == widths.length;
      flow.page().line(x, top, x, top + tall, edge ? 0.2 : HAIR, edge ? Ink.BLACK : Ink.RULE);
      x += i < widths.length ? widths[i] : 0;
    }
  }

  private double height(List<Cell> row) {
    double most = table.leastHeight();
    for (int i = 0; i < widths.length; i++) {
      double sum = 2 * PAD_Y;
      for (SetLine line : lines(i, row.get(i))) {
        sum += line.type().leading();
      }
      most = Math.max(most, sum);
    }
    return most;
  }

  private List<SetLine> lines(int column, Cell cell) {
    List<SetLine> out = new ArrayList<>();
    for (Cell.Piece piece : cell.pieces()) {
      Type type = piece.bold() ? Type.CELL_STRONG : Type.CELL;
      for (String line : Lines.wrap(paper, piece.text(), type, room(column))) {
        out.add(new SetLine(line, type, piece.struck()));
      }
    }
    return out;
  }
}
