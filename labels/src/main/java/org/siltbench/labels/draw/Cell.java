package org.siltbench.labels.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * What stands in one cell of a table.
 *
 * @param pieces from top to bottom
 */
public record Cell(List<Piece> pieces) {

  /** An empty cell, to write in. */
  public static final Cell EMPTY = new Cell(List.of());

  public Cell {
    pieces = List.copyOf(pieces);
  }

  /** A text in one weight, struck through where it no longer holds. */
  public record Piece(String text, boolean bold, boolean struck) {}

  public static Cell of(String text) {
    return text.isEmpty() ? EMPTY : new Cell(List.of(new Piece(text, false, false)));
  }

  public static Cell strong(String text) {
    return text.isEmpty() ? EMPTY : new Cell(List.of(new Piece(text, true, false)));
  }

  /** A strong first line over a plain second one. */
  public static Cell over(String first, String second) {
    List<Piece> out = new ArrayList<>(strong(first).pieces());
    out.addAll(of(second).pieces());
    return new Cell(out);
  }

  /** Earlier values struck through, then what holds. */
  public static Cell corrected(List<String> struck, String value, boolean bold) {
    List<Piece> out = new ArrayList<>();
    struck.forEach(old -> out.add(new Piece(old, false, true)));
    out.add(new Piece(value, bold, false));
    return new Cell(out);
  }
}
