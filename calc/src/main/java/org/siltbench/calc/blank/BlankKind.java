package org.siltbench.calc.blank;

/** The kinds of blanks; they answer different questions and are never mixed. */
public enum BlankKind {
  /** Filter and clean water through the whole laboratory procedure. */
  METHOD("method-blank"),
  /** Clean water filtered at the site. */
  FIELD("field-blank"),
  /** A filter that made the trip in its bag, unused. */
  TRIP("trip-blank"),
  /** A filter that stays in the laboratory and goes through every oven and weighing. */
  CONTROL("control"),
  /** Mass lost by a filter of the lot on washing and drying. */
  LOT_LOSS("lot-loss");

  private final String word;

  BlankKind(String word) {
    this.word = word;
  }

  /** The stable word, the same as the role of a filter where there is one. */
  public String word() {
    return word;
  }
}
