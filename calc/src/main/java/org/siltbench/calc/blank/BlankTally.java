package org.siltbench.calc.blank;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.stats.RunningSummary;
import org.siltbench.calc.stats.Summary;

/** Gathers the blanks of a batch, each kind by itself. Memory does not grow with their number. */
public final class BlankTally {

  private final BlankRule rule;
  private final Map<BlankKind, RunningSummary> residues = new EnumMap<>(BlankKind.class);
  private final Map<BlankKind, Long> high = new EnumMap<>(BlankKind.class);

  /** A tally under a method's rule. */
  public BlankTally(BlankRule rule) {
    this.rule = rule;
  }

  /**
   * Takes one blank filter.
   *
   * @param residue post less pre, signed
   * @param mgPerL its concentration in mg/L, or null where there is no volume
   * @return true when it is out of limits: {@link BlankRule#isHigh}
   */
  public boolean add(BlankKind kind, Mass residue, @Nullable Double mgPerL) {
    residues.computeIfAbsent(kind, k -> new RunningSummary()).add(residue.milligrams());
    boolean out = rule.isHigh(residue, mgPerL);
    if (out) {
      high.merge(kind, 1L, Long::sum);
    }
    return out;
  }

  /** How many blanks of a kind there are. */
  public long count(BlankKind kind) {
    RunningSummary summary = residues.get(kind);
    return summary == null ? 0 : summary.count();
  }

  /** How many of a kind are out of limits. */
  public long highCount(BlankKind kind) {
    return high.getOrDefault(kind, 0L);
  }

  /** Count, mean and standard deviation of a kind's residues in mg; null when there is none. */
  public @Nullable Summary summary(BlankKind kind) {
    RunningSummary summary = residues.get(kind);
    return summary == null ? null : summary.summary();
  }

  /** The rule in force. */
  public BlankRule rule() {
    return rule;
  }
}
