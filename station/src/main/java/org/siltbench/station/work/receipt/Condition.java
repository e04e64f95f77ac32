package org.siltbench.station.work.receipt;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/** How a filter came back, and what follows from it. */
public enum Condition {
  OK("ok", Consequence.NONE, null),
  TORN("torn", Consequence.FLAG, ReceiptSays.MEANS_TORN),
  TORN_LOSS("torn-loss", Consequence.HOLD, ReceiptSays.MEANS_TORN_LOSS),
  STUCK("stuck", Consequence.HOLD, ReceiptSays.MEANS_STUCK),
  RESIDUE_IN_BAG("residue-in-bag", Consequence.FLAG, ReceiptSays.MEANS_RESIDUE_IN_BAG),
  DEBRIS_REMOVED("debris-removed", Consequence.FLAG, ReceiptSays.MEANS_DEBRIS_REMOVED),
  MOULD("mould", Consequence.HOLD, ReceiptSays.MEANS_MOULD),
  LEAKED("leaked", Consequence.HOLD, ReceiptSays.MEANS_LEAKED),
  TWO_IN_BAG("two-in-bag", Consequence.HOLD, ReceiptSays.MEANS_TWO_IN_BAG),
  SAND_LEFT("sand-left", Consequence.FLAG, ReceiptSays.MEANS_SAND_LEFT),
  OVERFILLED("overfilled", Consequence.FLAG, ReceiptSays.MEANS_OVERFILLED);

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
  private final @Nullable ReceiptSays meaning;

  Condition(String code, Consequence consequence, @Nullable ReceiptSays meaning) {
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
  public Words means() {
    return meaning == null ? Words.none() : Said.of(meaning);
  }

  /** The same in English, as ledgers keep it. */
  public String meaning() {
    return means().english();
  }

  /** A reason as a ledger keeps it, in the reader's language where it is that of a condition. */
  public static Words told(String reason) {
    for (Condition condition : values()) {
      if (condition != OK && condition.meaning().equals(reason)) {
        return condition.means();
      }
    }
    return Words.verbatim(reason);
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
