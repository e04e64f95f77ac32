package org.siltbench.station.work;

import java.util.Locale;
import org.siltbench.station.Problem;
import org.siltbench.station.said.Said;

/** Names that people give: to a batch, a lot, a weight, a trip. */
public final class Names {

  private static final int LONGEST = 60;

  private Names() {}

  /**
   * The name without blanks around it.
   *
   * @param of what is named, for the message: {@code "batch"}
   * @throws Problem.WrongUse if it is empty, too long or holds control characters
   */
  public static String check(String of, String name) {
    String bare = name.strip();
    boolean odd = bare.chars().anyMatch(c -> Character.isISOControl(c));
    if (bare.isEmpty() || bare.length() > LONGEST || odd) {
      throw new Problem.WrongUse(
          WorkSays.NO_NAME,
          Said.of(WorkSays.valueOf("NAME_" + of.toUpperCase(Locale.ROOT))),
          LONGEST);
    }
    return bare;
  }
}
