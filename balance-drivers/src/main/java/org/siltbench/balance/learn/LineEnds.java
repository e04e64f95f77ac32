package org.siltbench.balance.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.siltbench.balance.format.Terminator;

/** Finds what ends a line, and cuts samples into whole lines. */
final class LineEnds {

  private static final List<String> PAIRS = List.of("\r\n", "\n\r");
  private static final List<String> SINGLES =
      List.of("\r", "\n", "\u0003", "\u0004", "\u001e", "\u0000", "\u0017");
  private static final String PRINTED = ";#$!&";
  private static final int FEWEST = 2;

  private LineEnds() {}

  static Optional<Terminator> find(List<Sample> samples) {
    StringBuilder all = new StringBuilder();
    samples.forEach(s -> all.append(s.text()).append('\u0001'));
    String text = all.toString();
    for (String pair : PAIRS) {
      if (count(text, pair) >= FEWEST && isWhole(text, pair)) {
        return Optional.of(new Terminator(pair));
      }
    }
    boolean cr = count(text, "\r") > 0;
    boolean lf = count(text, "\n") > 0;
    if (cr && lf && count(text, "\r") + count(text, "\n") >= FEWEST) {
      return Optional.of(Terminator.ANY);
    }
    for (String single : SINGLES) {
      if (count(text, single) >= FEWEST) {
        return Optional.of(new Terminator(single));
      }
    }
    return printed(text);
  }

  private static int count(String text, String part) {
    int count = 0;
    for (int at = text.indexOf(part); at >= 0; at = text.indexOf(part, at + part.length())) {
      count++;
    }
    return count;
  }

  /** True if the two characters never come alone; the ends of a capture may cut a pair. */
  private static boolean isWhole(String text, String pair) {
    String rest = text.replace(pair, "");
    String inner = rest.replaceAll("(^|\u0001)\\Q" + pair.charAt(1) + "\\E", "$1");
    inner = inner.replaceAll("\\Q" + pair.charAt(0) + "\\E(\u0001|$)", "$1");
    return inner.indexOf(pair.charAt(0)) < 0 && inner.indexOf(pair.charAt(1)) < 0;
  }

  /** A printed character that parts the text into three or more pieces with a number each. */
  private static Optional<Terminator> printed(String text) {
    for (int i = 0; i < PRINTED.length(); i++) {
      String c = PRINTED.substring(i, i + 1);
      String[] pieces = text.split(Pattern.quote(c), -1);
      long numbers =
          java.util.Arrays.stream(pieces).filter(p -> p.matches("(?s).*[0-9][.,][0-9].*")).count();
      if (pieces.length >= 4 && numbers >= 0.7 * (pieces.length - 2)) {
        return Optional.of(new Terminator(c));
      }
    }
    return Optional.empty();
  }

  /** The whole lines of a sample: neither the first, which may be half, nor an unended last. */
  static List<String> cut(Sample sample, Terminator ends) {
    String pattern = ends.text().isEmpty() ? "[\r\n]+" : Pattern.quote(ends.text());
    String[] pieces = sample.text().split(pattern, -1);
    List<String> out = new ArrayList<>();
    for (int i = sample.startsOnLine() ? 0 : 1; i < pieces.length - 1; i++) {
      if (!pieces[i].isEmpty()) {
        out.add(pieces[i]);
      }
    }
    return out;
  }
}
