package org.siltbench.calc.flag;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import org.siltbench.calc.reason.Reason;
import org.siltbench.calc.reason.ReasonCode;

/**
 * Every word that can stand in the column {@code flags} or in {@code batch_flags}. The list is
 * closed; a test compares it with {@code docs/flags.md}.
 */
public enum Flag implements ReasonCode {
  // What the arithmetic finds.
  NEGATIVE(
      "negative",
      Level.NOTE,
      "Below zero, by itself or after the blank: normal for blanks and clear water."),
  NEGATIVE_BEYOND_LIMIT(
      "negative-beyond-limit",
      Level.STOP,
      "The filter lost more than the method allows. Swapped, torn, or a wrong pre-weigh mass?"),
  BELOW_LIMIT("below-limit", Level.NOTE, "Below the reporting limit; the value is kept."),
  RESIDUE_LOW("residue-low", Level.WARNING, "Less residue than the method asks for; filter more."),
  RESIDUE_HIGH("residue-high", Level.WARNING, "More residue than the method allows; filter less."),
  NOT_TESTED("not-tested", Level.WARNING, "Weighed once only: constant mass was not tested."),
  NOT_CONSTANT(
      "not-constant", Level.WARNING, "The last two weighings do not agree: dry and weigh again."),
  CONSTANT_UNKNOWN(
      "constant-unknown", Level.WARNING, "Constant mass cannot be judged with these data."),
  COARSE_BALANCE(
      "coarse-balance", Level.WARNING, "The balance shows coarser steps than the method allows."),
  NO_VOLUME("no-volume", Level.WARNING, "No volume: the residue is given, a concentration is not."),
  SEVERAL_FILTERS(
      "several-filters",
      Level.NOTE,
      "The sample went over several filters: concentration and uncertainty are the sample's."),
  BLANK_SUBTRACTED("blank-subtracted", Level.NOTE, "The mean blank was subtracted."),
  BLANK_MISSING(
      "blank-missing",
      Level.WARNING,
      "The method subtracts a blank and there is none: nothing was subtracted."),
  BLANK_HIGH("blank-high", Level.WARNING, "This blank is out of its limits."),
  LOSS_HIGH("loss-high", Level.WARNING, "Filters of this lot lose more than the method allows."),
  DUPLICATE_APART("duplicate-apart", Level.WARNING, "The pair differs by more than its limit."),
  PAIR_INCOMPLETE("pair-incomplete", Level.WARNING, "The other half of the pair has no result."),
  PAIR_MIXED(
      "pair-mixed", Level.WARNING, "An aliquot and a whole bottle are no pair: not compared."),
  PAIR_CROWDED("pair-crowded", Level.WARNING, "More than two rows carry this pair: not compared."),
  TAKEN_MIXED(
      "taken-mixed",
      Level.STOP,
      "Filters of one sample were taken as aliquot and as whole bottle: never pooled."),
  ALIQUOT_DEPARTURE(
      "aliquot-departure",
      Level.WARNING,
      "An aliquot under a method for whole bottles: a departure from the method."),
  WHOLE_DEPARTURE(
      "whole-departure",
      Level.WARNING,
      "A whole bottle under a method for aliquots: a departure from the method."),
  BY_DISTRIBUTIONS(
      "by-distributions",
      Level.NOTE,
      "The volume is too uncertain for the first order: U is half the interval by distributions."),
  VOLUME_DOUBTFUL(
      "volume-doubtful",
      Level.WARNING,
      "The volume is uncertain by more than a quarter: no interval can be trusted."),
  FEW_DOF("few-dof", Level.NOTE, "The uncertainty rests on few observations; k is large."),

  VOLUME_BY_MASS(
      "volume-by-mass",
      Level.NOTE,
      "The volume was worked out from the mass of water and sediment."),
  SEDIMENT_VOLUME(
      "sediment-volume",
      Level.NOTE,
      "The sediment's own volume was added to that of the filtrate."),
  DISSOLVED_SUBTRACTED(
      "dissolved-subtracted", Level.NOTE, "Dissolved solids that dried up were taken off."),
  DISSOLVED_LEFT(
      "dissolved-left",
      Level.NOTE,
      "Dissolved solids were stated and not taken off: the method does not ask for it."),
  MUFFLING_UNKNOWN(
      "muffling-unknown",
      Level.WARNING,
      "Ignited, and it is not said of what the filter is made and how it was muffled."),
  NO_IGNITION_BLANK(
      "no-ignition-blank",
      Level.WARNING,
      "No blank was ignited: the filter's own loss counts as volatile."),
  RECOVERY_OUT("recovery-out", Level.WARNING, "The reference sample's recovery is out of limits."),

  // What the batch shows.
  NO_BLANKS("no-blanks", Level.WARNING, "The batch has no blank of the kind the method counts."),
  FEW_BLANKS("few-blanks", Level.WARNING, "The batch has fewer blanks than the method asks for."),
  BLANKS_HIGH("blanks-high", Level.WARNING, "At least one blank of the batch is out of limits."),
  FEW_DUPLICATES(
      "few-duplicates", Level.WARNING, "The batch has fewer pairs than the method asks for."),
  DUPLICATES_APART(
      "duplicates-apart", Level.WARNING, "At least one pair of the batch is out of its limit."),
  RECOVERIES_OUT(
      "recoveries-out",
      Level.WARNING,
      "The recovery of at least one reference sample of the batch is out of limits."),

  // What the bench saw happen to a filter or its water.
  TORN("torn", Level.WARNING, "The filter was torn; mass may be lost."),
  RESIDUE_LOST("residue-lost", Level.WARNING, "Residue was lost; the result is too low."),
  STUCK("stuck", Level.WARNING, "The filter stuck to its support."),
  RINSED_IN("rinsed-in", Level.NOTE, "Residue in the bag was rinsed through one more filter."),
  DEBRIS_REMOVED("debris-removed", Level.NOTE, "A leaf, an insect or the like was removed."),
  MOULD("mould", Level.WARNING, "Mould was seen."),
  LEAKED("leaked", Level.WARNING, "The bag or bottle leaked."),
  TWO_IN_BAG("two-in-bag", Level.WARNING, "Two filters were in one bag."),
  SAND_LEFT("sand-left", Level.WARNING, "Sand was left in the bottle; the result is too low."),
  SAND_IN_ALIQUOT(
      "sand-in-aliquot", Level.WARNING, "Sand does not follow an aliquot: the result is biased."),
  OVERFILLED("overfilled", Level.WARNING, "The bottle was overfilled."),
  LATE_FILTRATION(
      "late-filtration", Level.WARNING, "Filtered later than the method's holding time."),
  LATE_OVEN("late-oven", Level.WARNING, "The filter lay in its bag longer than the lab's rule."),
  SLOW_FILTRATION("slow-filtration", Level.NOTE, "Filtration was slow; the filter clogged."),
  VOLUME_RANGE("volume-range", Level.NOTE, "The volume was stated as a range."),
  TIME_BRACKETED("time-bracketed", Level.NOTE, "The time was taken from the neighbours."),
  SALT("salt", Level.NOTE, "Salt water: see the rinse and the filtrate blank."),
  MOISTURE("moisture", Level.NOTE, "Weighed while it took up moisture, within the allowance."),
  WEIGHED_WARM("weighed-warm", Level.WARNING, "Weighed before it had cooled long enough."),
  WEIGHED_STALE("weighed-stale", Level.WARNING, "Weighed after the desiccator's useful time."),
  OVEN_OUT("oven-out", Level.WARNING, "The oven was outside its range."),
  CONDITIONING("conditioning", Level.WARNING, "Pre- and post-weighing were not conditioned alike."),
  CHECK_MISSING("check-missing", Level.WARNING, "A check weight was not weighed when it was due."),
  CHECK_FAILED("check-failed", Level.STOP, "The balance failed its check around this weighing."),
  CHECK_OVERRIDDEN(
      "check-overridden",
      Level.STOP,
      "Weighed on a supervisor's word in spite of a failed or missing balance check."),
  KEYED("keyed", Level.NOTE, "A mass was keyed in, not read from the balance."),
  TWO_PRESSES("two-presses", Level.NOTE, "A mass was told by two presses, not watched to rest."),
  STATED("stated", Level.NOTE, "Recorded afterwards as stated, not observed."),
  CORRECTED("corrected", Level.NOTE, "An entry behind this result was corrected."),
  OLD_LABEL("old-label", Level.NOTE, "The bag carried an older label."),
  TWICE_WEIGHED("twice-weighed", Level.WARNING, "Two benches weighed this bag."),
  PRACTICE("practice", Level.NOTE, "From the practice balance: no real measurement.");

  /** How much a flag matters. */
  public enum Level {
    /** Good to know. */
    NOTE,
    /** The result is qualified. */
    WARNING,
    /** Stop and ask before the result is used. */
    STOP
  }

  private final String word;
  private final Level level;
  private final String means;

  Flag(String word, Level level, String means) {
    this.word = word;
    this.level = level;
    this.means = means;
  }

  /** The word in tables and JSON. */
  public String word() {
    return word;
  }

  /** How much it matters. */
  public Level level() {
    return level;
  }

  /** What it means, to be told in any language. */
  public Reason reason() {
    return with();
  }

  @Override
  public String english() {
    return means;
  }

  /** What it means, in plain words. */
  public String means() {
    return means;
  }

  /**
   * The flag of a word.
   *
   * @throws IllegalArgumentException for a word outside the list
   */
  public static Flag of(String word) {
    return Arrays.stream(values())
        .filter(flag -> flag.word.equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no flag \"" + word + '"'));
  }

  /** Words joined by semicolons, in the order of the list; empty for none. */
  public static String join(Collection<Flag> flags) {
    if (flags.isEmpty()) {
      return "";
    }
    if (flags.size() == 1) {
      return flags.iterator().next().word;
    }
    StringBuilder out = new StringBuilder();
    for (Flag flag : EnumSet.copyOf(flags)) {
      out.append(out.isEmpty() ? "" : ";").append(flag.word);
    }
    return out.toString();
  }
}
