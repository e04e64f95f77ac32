package org.siltbench.balance.learn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.format.LineFormat.MarkText;
import org.siltbench.balance.format.LineFormat.UnitText;
import org.siltbench.balance.format.MassUnit;
import org.siltbench.balance.format.Meaning;
import org.siltbench.balance.format.Part;
import org.siltbench.balance.learn.Cut.SignAt;

/** Puts the parts of a line together from a table of lines. */
final class Assembly {

  private final Table table;
  private final List<Cut> cuts;
  private final Optional<Marks.Found> mark;
  private final Optional<Part.Check> check;
  private final List<Part> parts = new ArrayList<>();

  Assembly(Table table, Optional<Marks.Found> mark, Optional<Part.Check> check) {
    this.table = table;
    this.cuts = table.cuts();
    this.mark = mark;
    this.check = check;
  }

  /** The parts of a line, left to right. */
  List<Part> parts(boolean unitMayMiss) {
    columns(table.before(), false);
    boolean unitFirst = cuts.get(0).unitFirst();
    if (unitFirst) {
      blanks(0, 1);
      parts.add(new Part.UnitField(false));
    }
    number(signAt());
    if (!unitFirst && hasUnit()) {
      blanks(0, 1);
      parts.add(new Part.UnitField(unitMayMiss));
    }
    if (signAt() == SignAt.AFTER_UNIT) {
      blanks(0, 1);
      parts.add(new Part.Sign());
    }
    columns(table.after(), true);
    end();
    return parts;
  }

  private boolean hasUnit() {
    return cuts.stream().anyMatch(c -> !c.unit().isEmpty());
  }

  private SignAt signAt() {
    Comparator<Cut> withUnitFirst = Comparator.comparing(c -> c.unit().isEmpty());
    return cuts.stream()
        .filter(c -> c.signAt() != SignAt.NONE)
        .min(withUnitFirst)
        .map(Cut::signAt)
        .orElse(SignAt.BEFORE);
  }

  private void number(SignAt sign) {
    int least = cuts.stream().mapToInt(c -> Atom.trailingBlanks(c.before())).min().orElse(0);
    boolean closed = !parts.isEmpty() && isOpen(parts.get(parts.size() - 1));
    if (closed && least > 0) {
      parts.add(new Part.Gap());
    } else {
      blanks(0, 1);
    }
    if (sign == SignAt.BEFORE) {
      parts.add(new Part.Sign());
      blanks(0, 1);
    }
    parts.add(new Part.Numeral());
    if (sign == SignAt.AFTER_NUMBER) {
      blanks(0, 1);
      parts.add(new Part.Sign());
    }
  }

  /** A part that would swallow what follows it without a gap. */
  private static boolean isOpen(Part part) {
    return part instanceof Part.Word || part instanceof Part.Digits;
  }

  private void columns(List<Column> columns, boolean afterNumber) {
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      boolean behindNumber =
          afterNumber && i == 0; // blanks may have gone to an absent sign or unit
      blanks(column.isOptional() || behindNumber ? 0 : column.least(), column.most());
      parts.add(part(column));
      if (column.isOptional()) {
        blanks(0, 1);
      }
    }
  }

  private Part part(Column column) {
    if (mark.isPresent() && mark.get().column().equals(column)) {
      return new Part.MarkField();
    }
    if (column.isConstant()) {
      return new Part.Text(column.values().get(0));
    }
    return column.allDigits() ? new Part.Digits() : new Part.Word();
  }

  private void blanks(int least, int most) {
    if (most == 0 || (!parts.isEmpty() && isBlank(parts.get(parts.size() - 1)))) {
      return;
    }
    parts.add(least > 0 ? new Part.Gap() : new Part.Blanks());
  }

  private static boolean isBlank(Part part) {
    return part instanceof Part.Blanks || part instanceof Part.Gap;
  }

  private void end() {
    blanks(0, 1);
    if (check.isPresent()) {
      parts.add(check.get());
      blanks(0, 1);
    }
  }

  /** The units seen, each as it was written. */
  List<UnitText> units() {
    Map<String, UnitText> out = new LinkedHashMap<>();
    for (Cut cut : cuts) {
      MassUnit unit = cut.unit().isEmpty() ? null : UnitWords.of(cut.unit());
      if (unit != null) {
        out.put(cut.unit(), new UnitText(cut.unit(), unit));
      }
    }
    return List.copyOf(out.values());
  }

  /** The marks seen, with what they mean. */
  List<MarkText> marks() {
    List<MarkText> out = new ArrayList<>();
    mark.ifPresent(m -> m.meanings().forEach((t, meaning) -> out.add(new MarkText(t, meaning))));
    return out;
  }

  /** The length all lines share where blanks or zeros pad the number; else 0. */
  int length() {
    int length = cuts.get(0).line().length();
    boolean same = cuts.stream().allMatch(c -> c.line().length() == length);
    boolean vary = cuts.stream().map(Cut::wholeDigits).distinct().count() > 1;
    boolean padded = cuts.stream().allMatch(c -> padding(c) >= (vary ? 1 : 2));
    return same && padded && cuts.size() >= 3 ? length : 0;
  }

  /** Blanks before the number, or zeros in front of it that it would not need. */
  private static int padding(Cut cut) {
    int at = cut.line().lastIndexOf(cut.number());
    int blanks = Atom.trailingBlanks(cut.line().substring(0, at));
    boolean zero = cut.wholeDigits() > 1 && cut.number().charAt(0) == '0';
    return zero ? 2 : blanks;
  }

  /** The unit to supply where lines carry none: told by the person, or moving lines lack it. */
  static @Nullable MassUnit supplied(@Nullable MassUnit told, boolean anyUnit) {
    return anyUnit ? null : told;
  }

  /** What a missing unit means. */
  static Meaning missing(boolean unitMayMiss) {
    return unitMayMiss ? Meaning.MOVING : Meaning.NOTHING;
  }
}
