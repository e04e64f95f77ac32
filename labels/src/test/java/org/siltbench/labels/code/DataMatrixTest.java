package org.siltbench.labels.code;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.zxing.datamatrix.encoder.ErrorCorrection;
import com.google.zxing.datamatrix.encoder.HighLevelEncoder;
import com.google.zxing.datamatrix.encoder.SymbolInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DataMatrixTest {

  /** ISO/IEC 16022, worked example for "123456" in a 10 x 10 symbol. */
  @Test
  void codeWordsOfTheStandardsExample() {
    String data = HighLevelEncoder.encodeHighLevel("123456");
    String all = ErrorCorrection.encodeECC200(data, SymbolInfo.lookup(data.length()));
    assertArrayEquals(new int[] {142, 164, 186, 114, 25, 5, 88, 102}, all.chars().toArray());
    assertEquals(10, Codes.encode(CodeKind.DATA_MATRIX, "123456").columns());
  }

  /** ISO/IEC 16022 table of symbol sizes (numeric capacity; from memory). */
  @ParameterizedTest
  @CsvSource({"6,10", "10,12", "16,14", "24,16", "36,18", "44,20"})
  void digitsFillTheSizesOfTheStandard(int digits, int side) {
    assertEquals(side, Codes.encode(CodeKind.DATA_MATRIX, "7".repeat(digits)).columns());
  }

  /** Left and bottom edges are solid, top and right edges alternate (ISO/IEC 16022, finder). */
  @Test
  void finderPatternStandsAtTheEdges() {
    CodeGrid grid = Codes.encode(CodeKind.DATA_MATRIX, "K3DF0712R5112874");
    boolean[][] dark = new boolean[grid.rows()][grid.columns()];
    for (int run = 0; run < grid.runs(); run++) {
      for (int i = 0; i < grid.lengthOf(run); i++) {
        dark[grid.rowOf(run)][grid.columnOf(run) + i] = true;
      }
    }
    int last = grid.rows() - 1;
    for (int i = 0; i <= last; i++) {
      assertEquals(true, dark[i][0]);
      assertEquals(true, dark[last][i]);
      assertEquals(i % 2 == 0, dark[0][i]);
      assertEquals(i % 2 == 1, dark[i][last]);
    }
  }
}
