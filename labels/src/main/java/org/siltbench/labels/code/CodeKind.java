package org.siltbench.labels.code;

/** The codes a label can carry. */
public enum CodeKind {
  DATA_MATRIX("data-matrix"),
  QR("qr"),
  CODE_128("code-128");

  private final String word;

  CodeKind(String word) {
    this.word = word;
  }

  /** The stable word for options and tables. */
  public String word() {
    return word;
  }

  public static CodeKind of(String word) {
    for (CodeKind kind : values()) {
      if (kind.word.equals(word)) {
        return kind;
      }
    }
    throw new IllegalArgumentException("not a kind of code: " + word);
  }
}
