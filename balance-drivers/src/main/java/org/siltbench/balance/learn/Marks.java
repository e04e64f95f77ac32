package org.siltbench.balance.learn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.siltbench.balance.format.Meaning;
import org.siltbench.balance.learn.Motion.How;

/** Finds the column that says whether the balance is at rest, and what its texts mean. */
final class Marks {

  private Marks() {}

  /** A column and what its texts mean. */
  record Found(Column column, Map<String, Meaning> meanings) {

    boolean tellsRest() {
      return meanings.containsValue(Meaning.STABLE) && meanings.containsValue(Meaning.MOVING);
    }
  }

  /** The column that follows the movement, if there is one; else the first of few texts. */
  static Optional<Found> find(Table table) {
    Motion motion = new Motion(table.cuts());
    List<Found> all = new ArrayList<>();
    for (List<Column> side : List.of(table.before(), table.after())) {
      for (Column column : side) {
        if (!column.isConstant() && !column.separator() && column.fewTexts()) {
          all.add(new Found(column, meanings(table, column, motion)));
        }
      }
    }
    Optional<Found> best = all.stream().filter(Found::tellsRest).findFirst();
    return best.isPresent() ? best : all.stream().filter(Marks::isStatus).findFirst();
  }

  /** Words and single digits can be a status; longer digits are a counter. */
  private static boolean isStatus(Found found) {
    return !found.column().allDigits() || found.column().oneDigitEach();
  }

  private static Map<String, Meaning> meanings(Table table, Column column, Motion motion) {
    Map<String, Meaning> out = new LinkedHashMap<>();
    for (String text : column.distinct()) {
      out.put(text, meaning(table, column, motion, text));
    }
    boolean both = out.containsValue(Meaning.MOVING) && out.containsValue(Meaning.STABLE);
    if (!both) {
      out.replaceAll((t, m) -> m == Meaning.OVER ? m : Meaning.NOTHING);
    }
    return out;
  }

  private static Meaning meaning(Table table, Column column, Motion motion, String text) {
    List<String> values = column.values();
    boolean onlyOver = true;
    for (int i = 0; i < values.size(); i++) {
      boolean here = values.get(i).equals(text);
      onlyOver &= !here || table.cuts().get(i).situation() == Situation.OVER;
    }
    if (onlyOver) {
      return Meaning.OVER;
    }
    How how = motion.of(i -> values.get(i).equals(text));
    return switch (how) {
      case STILL -> Meaning.STABLE;
      case MOVING -> Meaning.MOVING;
      case UNSURE -> Meaning.NOTHING;
    };
  }

  /** True if the texts come strictly in turn: a block of several masses, not a mark. */
  static boolean inTurn(Column column) {
    List<String> values = column.values();
    int period = column.distinct().size();
    if (period < 2 || values.size() < 2 * period || column.allDigits()) {
      return false;
    }
    for (int i = period; i < values.size(); i++) {
      if (!values.get(i).equals(values.get(i - period))) {
        return false;
      }
    }
    return true;
  }
}
