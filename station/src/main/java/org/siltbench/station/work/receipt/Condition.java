package org.siltbench.station.work.receipt;

import java.util.Optional;

/** How a filter came back, and what follows from it. */
public enum Condition {
  OK("ok", Consequence.NONE, ""),
  TORN("torn", Consequence.FLAG, "torn, no loss seen: note it and go on"),
  TORN_LOSS("torn-loss", Consequence.HOLD, "torn with loss: the residue is a lower bound"),
  STUCK("stuck", Consequence.HOLD, "stuck to the support: fibres or residue may be left there"),
  RESIDUE_IN_BAG(
      "residue-in-bag",
      Consequence.FLAG,
      "residue in the bag: rinse it through one more filter and give that the same sample number"),
  DEBRIS_REMOVED("debris-removed", Consequence.FLAG, "a leaf or an insect was taken off"),
  MOULD("mould", Consequence.HOLD, "mould: the mass has changed since the field"),
  LEAKED("leaked", Consequence.HOLD, "the bag leaked: residue may be lost"),
  TWO_IN_BAG("two-in-bag", Consequence.HOLD, "two filters in one bag: tell them apart first"),
  SAND_LEFT("sand-left", Consequence.FLAG, "sand was left in the bottle: the result is low"),
  OVERFILLED("overfilled", Consequence.FLAG, "overfilled: water trapped in a thick residue");

  /** What a condition does to the result. */
  public enum Consequence {
    /** Nothing. */
    NONE,
    /** The result carries a flag. */
    FLAG,
    /** The result is kept back until somebody decides. */
    HOLD
  }

  private final String code;
  private final Consequence consequence;
  private final String meaning;

  Condition(String code, Consequence consequence, String meaning) {
    this.code = code;
    this.consequence = consequence;
    this.meaning = meaning;
  }

  /** The stable word for tables. */
  public String code() {
    return code;
  }

  public Consequence consequence() {
    return consequence;
  }

  /** What it means, in a few words. */
  public String meaning() {
    return meaning;
  }

  /** Reads a stable word; blanks and underscores count as hyphens. */
  public static Optional<Condition> of(String word) {
    String plain = word.strip().toLowerCase(java.util.Locale.ROOT).replaceAll("[ _]+", "-");
    for (Condition condition : values()) {
      if (condition.code.equals(plain)) {
        return Optional.of(condition);
      }
    }
    return Optional.empty();
  }
}
