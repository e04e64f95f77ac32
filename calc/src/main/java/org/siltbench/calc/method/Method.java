package org.siltbench.calc.method;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.BlankRule;

/**
 * The numbers of one analytical procedure. It is text that a person can read and keep: {@link
 * #parse} and {@link #text()} are inverse to each other.
 *
 * @param key the word scripts use, as {@code sm-2540d-22}
 * @param title what it is, in plain words
 * @param standard the published standard it follows, or "own"
 * @param edition the edition of that standard
 * @param parameter what is measured
 * @param taken aliquot or whole bottle
 * @param ignition loss on ignition; null where the method ends with drying
 */
public record Method(
    String key,
    String title,
    String standard,
    String edition,
    Parameter parameter,
    Taken taken,
    Drying drying,
    Constancy constancy,
    BlankRule blank,
    ResidueRule residue,
    BalanceRule balance,
    SampleRule sample,
    UncertaintyInputs uncertainty,
    ReportRule report,
    DuplicateTerms duplicates,
    @Nullable Ignition ignition) {

  /**
   * Reads a method's text: {@code key = value} lines, {@code #} starts a comment.
   *
   * @throws MethodException with every fault found: line, key, what was expected, what was there
   */
  public static Method parse(String text) {
    return MethodReader.read(text);
  }

  /**
   * The canonical text: every key once, in a fixed order, without comments. Two methods are equal
   * exactly when their texts are; hash this text.
   */
  public String text() {
    return MethodWriter.write(this);
  }
}
