package org.siltbench.balance.learn;

import org.jspecify.annotations.Nullable;
import org.siltbench.balance.format.LineFormat.Talk;
import org.siltbench.balance.format.MassUnit;

/**
 * What the person knows besides the lines.
 *
 * @param unit the unit where the lines name none, or null
 * @param talk how the balance was made to speak, or null if that is not known
 * @param textFile true if the lines come from a text file, whose line ends say nothing
 */
public record Hints(@Nullable MassUnit unit, @Nullable Talk talk, boolean textFile) {

  /** Nothing is known. */
  public static final Hints NONE = new Hints(null, null, false);
}
