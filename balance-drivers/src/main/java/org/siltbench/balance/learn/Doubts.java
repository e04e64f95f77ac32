package org.siltbench.balance.learn;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.siltbench.balance.learn.Cut.SignAt;
import org.siltbench.calc.reason.Reason;

/** Reasons not to trust what the lines seem to say. Each would let a wrong mass through. */
final class Doubts {

  private static final Pattern DIGITS_BEFORE =
      Pattern.compile("(^|[^A-Za-z0-9])[0-9]{1,3}[ ,.'_]$");
  private static final Pattern POINT_BEFORE = Pattern.compile("[0-9][.][0-9]+[ ']?$");
  private static final Pattern COMMA_BEFORE = Pattern.compile("[0-9],[0-9]+[ ']?$");

  private Doubts() {}

  /** The first doubt there is, to be told. */
  static Optional<Reason> first(List<Cut> cuts) {
    if (cuts.stream().anyMatch(c -> c.number().contains(","))
        && cuts.stream().anyMatch(c -> c.number().contains("."))) {
      return Optional.of(LearnSays.BOTH_MARKS.with());
    }
    return comma(cuts).or(() -> grouped(cuts)).or(() -> sign(cuts));
  }

  private static Optional<Reason> comma(List<Cut> cuts) {
    List<Cut> with = cuts.stream().filter(c -> c.number().contains(",")).toList();
    boolean sure = with.stream().anyMatch(c -> c.decimals() != 3 || c.number().startsWith("0"));
    return with.isEmpty() || sure
        ? Optional.empty()
        : Optional.of(LearnSays.COMMA_THOUSANDS.with(with.get(0).number()));
  }

  /** Digits close before the number may be its front: 1 234.5 and 1,234.5. */
  private static Optional<Reason> grouped(List<Cut> cuts) {
    boolean commas = cuts.stream().anyMatch(c -> c.point() == ',');
    Pattern decimals = commas ? COMMA_BEFORE : POINT_BEFORE;
    if (cuts.stream().anyMatch(c -> decimals.matcher(c.before()).find())) {
      return Optional.of(LearnSays.TWO_NUMBERS.with());
    }
    List<Cut> close =
        cuts.stream()
            .filter(c -> c.signAt() != SignAt.BEFORE && !c.unitFirst())
            .filter(c -> DIGITS_BEFORE.matcher(c.before()).find())
            .toList();
    boolean every = close.size() == cuts.stream().filter(c -> c.signAt() != SignAt.BEFORE).count();
    boolean parted = close.stream().anyMatch(c -> c.wholeDigits() != 3);
    return close.isEmpty() || (every && parted)
        ? Optional.empty()
        : Optional.of(LearnSays.DIGITS_BEFORE.with(close.get(0).number()));
  }

  private static Optional<Reason> sign(List<Cut> cuts) {
    boolean before = cuts.stream().anyMatch(c -> c.signAt() == SignAt.BEFORE);
    long behind =
        cuts.stream()
            .filter(c -> !c.unit().isEmpty() || cuts.stream().allMatch(o -> o.unit().isEmpty()))
            .map(Cut::signAt)
            .filter(s -> s != SignAt.NONE && s != SignAt.BEFORE)
            .distinct()
            .count();
    if ((before && behind > 0) || behind > 1) {
      return Optional.of(LearnSays.SIGN_BOTH_SIDES.with());
    }
    boolean allMinus = cuts.stream().allMatch(c -> c.sign() == '-');
    boolean glued = cuts.stream().anyMatch(Cut::glued);
    return allMinus && (glued || behind > 0)
        ? Optional.of(LearnSays.DASH_EVERYWHERE.with())
        : Optional.empty();
  }

  /** A dash in a place that no sign was seen in may be the sign all the same. */
  static Optional<Reason> dash(Table table) {
    boolean alone =
        Stream.concat(table.before().stream(), table.after().stream())
            .filter(c -> !c.separator())
            .anyMatch(
                c ->
                    c.values().contains("-")
                        || (!c.isConstant() && c.values().stream().anyMatch(Doubts::hasSign)));
    return alone ? Optional.of(LearnSays.DASH_UNCLEAR.with()) : Optional.empty();
  }

  private static boolean hasSign(String text) {
    return text.startsWith("-") || text.startsWith("+") || text.endsWith("-");
  }

  /** A lone capital that comes and goes without the movement may stand for gross. */
  static Optional<Reason> unit(List<Cut> cuts) {
    boolean capital = cuts.stream().anyMatch(c -> c.unit().equals("G"));
    boolean bare = cuts.stream().anyMatch(c -> c.unit().isEmpty());
    return capital && bare ? Optional.of(LearnSays.CAPITAL_G.with()) : Optional.empty();
  }
}
