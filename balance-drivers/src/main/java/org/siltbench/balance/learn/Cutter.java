package org.siltbench.balance.learn;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.siltbench.balance.learn.Cut.SignAt;

/** Cuts a line at the one number that can be its mass; where two could be, it cuts none. */
final class Cutter {

  private static final Pattern POWER = Pattern.compile("[0-9][eE][+-]?[0-9]");
  private static final String AFTER_NUMBER = " \t,;:|*?#!<>=/+-";
  private static final int MOST_DIGITS = 15;

  private Cutter() {}

  /** The line cut, or nothing if it has no number that is surely the mass. */
  static Optional<Cut> cut(String line, Situation situation, int sample) {
    if (POWER.matcher(line).find()) {
      return Optional.empty();
    }
    List<Numeral> all =
        Numeral.in(line).stream()
            .filter(n -> n.to() - n.from() <= MOST_DIGITS && !n.inName(line))
            .toList();
    return choose(line, all).map(n -> cut(line, n, situation, sample));
  }

  private static Optional<Numeral> choose(String line, List<Numeral> all) {
    List<Numeral> withUnit = all.stream().filter(n -> unitAfter(line, n) > 0).toList();
    if (withUnit.isEmpty()) {
      withUnit = all.stream().filter(n -> unitBefore(line, n) > 0).toList();
    }
    List<Numeral> marked = all.stream().filter(Numeral::marked).toList();
    List<Numeral> chosen = withUnit.isEmpty() ? marked : withUnit;
    if (chosen.isEmpty() && all.size() == 1) {
      chosen = all;
    }
    if (chosen.size() != 1) {
      return Optional.empty();
    }
    Numeral one = chosen.get(0);
    boolean hidden = !one.marked() && !marked.isEmpty();
    return hidden || !endsWell(line, one) ? Optional.empty() : Optional.of(one);
  }

  /** What follows the digits must not be able to belong to them, as a bracketed digit would. */
  private static boolean endsWell(String line, Numeral n) {
    if (n.to() == line.length()) {
      return true;
    }
    char next = line.charAt(n.to());
    return UnitWords.isUnitChar(next) || next < ' ' || AFTER_NUMBER.indexOf(next) >= 0;
  }

  private static int skipBlanks(String line, int from) {
    int at = from;
    while (at < line.length() && (line.charAt(at) == ' ' || line.charAt(at) == '\t')) {
      at++;
    }
    return at;
  }

  private static boolean isSign(String line, int at) {
    return at >= 0 && at < line.length() && (line.charAt(at) == '-' || line.charAt(at) == '+');
  }

  /** The length of the unit word after a numeral, blanks and a trailing sign skipped; or 0. */
  private static int unitAfter(String line, Numeral n) {
    return UnitWords.at(line, unitPlace(line, n.to()));
  }

  private static int unitPlace(String line, int from) {
    int at = skipBlanks(line, from);
    return isSign(line, at) ? skipBlanks(line, at + 1) : at;
  }

  /** The length of the unit word before a numeral; a lone capital is no unit there. */
  private static int unitBefore(String line, Numeral n) {
    int end = backOverBlanks(line, signPlace(line, n.from()));
    int from = end;
    while (from > 0 && UnitWords.isUnitChar(line.charAt(from - 1))) {
      from--;
    }
    String word = line.substring(from, end);
    return UnitWords.of(word) == null || word.equals("G") ? 0 : word.length();
  }

  private static int backOverBlanks(String line, int from) {
    int at = from;
    while (at > 0 && (line.charAt(at - 1) == ' ' || line.charAt(at - 1) == '\t')) {
      at--;
    }
    return at;
  }

  /** Where the sign before a numeral stands, or the numeral's own place if there is none. */
  private static int signPlace(String line, int from) {
    int at = backOverBlanks(line, from);
    return isSign(line, at - 1) ? at - 1 : from;
  }

  private static Cut cut(String line, Numeral n, Situation situation, int sample) {
    boolean unitAfter = unitAfter(line, n) > 0;
    int left = signPlace(line, n.from());
    boolean before = left < n.from();
    int unitLength = unitAfter ? unitAfter(line, n) : 0;
    int unitAt = unitAfter ? unitPlace(line, n.to()) : n.to();
    int right = unitAt + unitLength;
    boolean afterNumber = unitAfter ? isSign(line, skipBlanks(line, n.to())) : endSign(line, right);
    boolean afterUnit = unitAfter && !afterNumber && endSign(line, right);
    int signAt = before ? left : afterNumber ? skipBlanks(line, n.to()) : skipBlanks(line, right);
    if (!before && (afterUnit || (afterNumber && !unitAfter))) {
      right = signAt + 1;
    }
    return assemble(
        line,
        situation,
        sample,
        n,
        left,
        right,
        line.substring(unitAt, unitAt + unitLength),
        before ? SignAt.BEFORE : after(afterNumber, afterUnit),
        signAt);
  }

  private static SignAt after(boolean afterNumber, boolean afterUnit) {
    return afterNumber ? SignAt.AFTER_NUMBER : afterUnit ? SignAt.AFTER_UNIT : SignAt.NONE;
  }

  /** A sign close behind, followed by a blank, a separator or nothing. */
  private static boolean endSign(String line, int from) {
    int at = skipBlanks(line, from);
    return isSign(line, at)
        && (at + 1 == line.length() || " \t,;:|/".indexOf(line.charAt(at + 1)) >= 0);
  }

  private static Cut assemble(
      String line,
      Situation situation,
      int sample,
      Numeral n,
      int left,
      int right,
      String unit,
      SignAt where,
      int signAt) {
    int first = unit.isEmpty() ? unitBefore(line, n) : 0;
    int unitEnd = first > 0 ? backOverBlanks(line, left) : left;
    String word = first > 0 ? line.substring(unitEnd - first, unitEnd) : unit;
    String before = line.substring(0, first > 0 ? unitEnd - first : left);
    char sign = where == SignAt.NONE ? 0 : line.charAt(signAt);
    boolean glued = where == SignAt.BEFORE && isGlued(before);
    return new Cut(
        line,
        situation,
        sample,
        before,
        sign,
        where,
        glued,
        line.substring(n.from(), n.to()),
        word,
        first > 0,
        line.substring(right));
  }

  private static boolean isGlued(String before) {
    if (before.isEmpty()) {
      return false;
    }
    char last = before.charAt(before.length() - 1);
    return Character.isLetterOrDigit(last) || last == '-' || last == '+';
  }
}
