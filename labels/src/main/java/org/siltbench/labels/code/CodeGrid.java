package org.siltbench.labels.code;

import com.google.zxing.common.BitMatrix;
import java.util.Arrays;

/** A code as a grid of modules, without its quiet zone; dark modules side by side form one run. */
public final class CodeGrid {

  private static final int FIELD = 10;
  private static final int MASK = (1 << FIELD) - 1;

  private final CodeKind kind;
  private final int columns;
  private final int rows;
  private final int[] runs;

  private CodeGrid(CodeKind kind, int columns, int rows, int[] runs) {
    this.kind = kind;
    this.columns = columns;
    this.rows = rows;
    this.runs = runs;
  }

  static CodeGrid of(CodeKind kind, BitMatrix bits) {
    int rows = kind.isBars() ? 1 : bits.getHeight();
    int[] runs = new int[rows * (bits.getWidth() / 2 + 1)];
    int count = 0;
    for (int row = 0; row < rows; row++) {
      count = addRuns(bits, row, runs, count);
    }
    return new CodeGrid(kind, bits.getWidth(), rows, Arrays.copyOf(runs, count));
  }

  private static int addRuns(BitMatrix bits, int row, int[] runs, int from) {
    int count = from;
    int column = 0;
    while (column < bits.getWidth()) {
      int start = column;
      while (column < bits.getWidth() && bits.get(column, row)) {
        column++;
      }
      if (column > start) {
        runs[count++] = (row << (2 * FIELD)) | (start << FIELD) | (column - start);
      }
      column++;
    }
    return count;
  }

  public CodeKind kind() {
    return kind;
  }

  /** Modules across. */
  public int columns() {
    return columns;
  }

  /** Modules down; 1 for bars. */
  public int rows() {
    return rows;
  }

  public int runs() {
    return runs.length;
  }

  public int rowOf(int run) {
    return runs[run] >> (2 * FIELD);
  }

  public int columnOf(int run) {
    return (runs[run] >> FIELD) & MASK;
  }

  public int lengthOf(int run) {
    return runs[run] & MASK;
  }

  /** Modules across with the quiet zone on both sides. */
  public int columnsWithQuiet() {
    return columns + 2 * kind.quiet();
  }
}
