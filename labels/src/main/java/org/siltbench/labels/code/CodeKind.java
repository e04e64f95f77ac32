package org.siltbench.labels.code;

import org.siltbench.calc.reason.Unfit;
import org.siltbench.labels.PapersSay;

/** The codes a label can carry, with the quiet zone each needs in modules. */
public enum CodeKind {
  /** ISO/IEC 16022: one module on all sides. */
  DATA_MATRIX("data-matrix", 1),
  /** ISO/IEC 18004: four modules on all sides. */
  QR("qr", 4),
  /** ISO/IEC 15417: ten modules left and right. */
  CODE_128("code-128", 10);

  private final String word;
  private final int quiet;

  CodeKind(String word, int quiet) {
    this.word = word;
    this.quiet = quiet;
  }

  /** The stable word for options and tables. */
  public String word() {
    return word;
  }

  public int quiet() {
    return quiet;
  }

  public boolean isBars() {
    return this == CODE_128;
  }

  /** Reads a stable word. */
  public static CodeKind of(String word) {
    for (CodeKind kind : values()) {
      if (kind.word.equals(word)) {
        return kind;
      }
    }
    throw new Unfit(PapersSay.NO_KIND, word);
  }
}
