package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Taken;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;

/** The cells of one row being read; a place of −1 is a column that is not there. */
final class RowCells {

  private static final String MASS = "a mass in g as displayed, as 0.11234";
  private static final int FINEST = 9;
  private static final Mass[] STEPS = new Mass[FINEST + 1];

  static {
    long step = 1_000_000_000L;
    for (int i = 0; i <= FINEST; i++) {
      STEPS[i] = new Mass(step);
      step /= 10;
    }
  }

  private final List<String> fields;
  private final long line;
  private final List<RowFault> faults;
  private int decimals = -1;

  RowCells(List<String> fields, long line, List<RowFault> faults) {
    this.fields = fields;
    this.line = line;
    this.faults = faults;
  }

  String text(int place) {
    if (place < 0 || place >= fields.size()) {
      return "";
    }
    String text = fields.get(place);
    int last = text.length() - 1;
    return last < 0 || (isPrint(text.charAt(0)) && isPrint(text.charAt(last)))
        ? text
        : text.strip();
  }

  /** Certainly no blank. */
  private static boolean isPrint(char c) {
    return c > ' ' && c < 0x7f;
  }

  void fault(String column, String found, String expected) {
    faults.add(new RowFault(line, column, found, expected));
  }

  RowRole role(int place) {
    String word = text(place);
    RowRole role = RowRole.of(word);
    if (role == null) {
      role = RowRole.of(word.toLowerCase(Locale.ROOT));
    }
    if (role == null) {
      fault("role", word, "sample, field-blank, trip-blank, method-blank, control or reference");
      return RowRole.SAMPLE;
    }
    return role;
  }

  void posts(InputRow.Builder row, int post, int[] numbered, String[] names) {
    Mass stated = mass("post_g", post);
    List<Mass> judged = numbered.length == 0 ? List.of() : new ArrayList<>();
    for (int i = 0; i < numbered.length; i++) {
      Mass mass = mass(names[i], numbered[i]);
      if (mass != null) {
        judged.add(mass);
      }
    }
    if (stated != null && !judged.isEmpty()) {
      fault("post_g", text(post), "either post_g or post1_g, post2_g, …, not both");
    } else if (stated != null) {
      row.post(stated);
    } else {
      row.posts(judged);
    }
  }

  @Nullable Mass mass(String column, int place) {
    String text = text(place);
    if (text.isEmpty()) {
      return null;
    }
    try {
      Mass mass = Mass.ofGrams(text);
      int point = text.indexOf('.');
      decimals = Math.max(decimals, point < 0 ? 0 : text.length() - point - 1);
      return mass;
    } catch (NumberFormatException e) {
      fault(column, text, MASS);
      return null;
    }
  }

  /** The step of the finest mass read: a spreadsheet may have eaten trailing zeros. */
  @Nullable Mass resolution() {
    return decimals < 0 || decimals > FINEST ? null : STEPS[decimals];
  }

  @Nullable Volume volume(String column, int place) {
    String text = text(place);
    try {
      return text.isEmpty() ? null : Volume.ofMillilitres(text);
    } catch (NumberFormatException e) {
      fault(column, text, "a volume in mL as a plain number, as 250");
      return null;
    }
  }

  @Nullable Double volumeU(int place) {
    String text = text(place);
    try {
      return text.isEmpty() ? null : (Double) Volume.ofMillilitres(text).millilitres();
    } catch (NumberFormatException e) {
      fault("volume_u_ml", text, "a standard uncertainty in mL as a plain number, as 2.5");
      return null;
    }
  }

  /** A plain decimal number, zero or above. */
  @Nullable Double number(String column, int place, String expected) {
    String text = text(place);
    try {
      Volume exact = text.isEmpty() ? null : Volume.ofMillilitres(text);
      if (exact == null || exact.nanolitres() >= 0) {
        return exact == null ? null : (Double) exact.millilitres();
      }
    } catch (NumberFormatException e) {
      // told below with what was expected
    }
    fault(column, text, expected + ", zero or above, as a plain number");
    return null;
  }

  @Nullable Taken taken(int place) {
    String word = text(place);
    if (word.isEmpty()) {
      return null;
    }
    for (Taken taken : Taken.values()) {
      if (taken.word().equalsIgnoreCase(word)) {
        return taken;
      }
    }
    fault("taken", word, "aliquot or whole");
    return null;
  }
}
