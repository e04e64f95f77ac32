package org.siltbench.balance.learn;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.siltbench.balance.format.Part;

/** Finds out whether the last two characters of all lines are check digits, and of what kind. */
final class CheckDigits {

  private static final Pattern HEX = Pattern.compile("(?s).*[0-9A-Fa-f]{2}[ \t]*");
  private static final int FEWEST_LINES = 3;

  private CheckDigits() {}

  static Optional<Part.Check> find(List<Cut> cuts) {
    boolean possible =
        cuts.stream().map(Cut::line).distinct().count() >= FEWEST_LINES
            && cuts.stream().allMatch(c -> HEX.matcher(c.after()).matches());
    if (!possible) {
      return Optional.empty();
    }
    for (Part.Sum sum : Part.Sum.values()) {
      for (int from = 0; from <= 1; from++) {
        Part.Check check = new Part.Check(sum, from);
        if (cuts.stream().allMatch(c -> agrees(check, c.line()))) {
          return Optional.of(check);
        }
      }
    }
    return Optional.empty();
  }

  private static boolean agrees(Part.Check check, String line) {
    int at = line.length() - Atom.trailingBlanks(line) - 2;
    byte[] bytes = line.getBytes(ISO_8859_1);
    int stated = Integer.parseInt(line.substring(at, at + 2), 16);
    return at > check.from() && check.sum().of(bytes, check.from(), at) == stated;
  }
}
