package org.siltbench.station.work.calculate;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.result.Concentration;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.calc.result.ResultRow;

/** The columns that a calculation adds: unrounded for programs, rounded for people. */
public final class ResultColumns {

  /** Their names, in order. */
  public static final List<String> NAMES =
      List.of(
          "residue_mg", "blank_mg", "conc_mg_l", "u_mg_l", "U_mg_l", "dof", "constant", "flags");

  private ResultColumns() {}

  /** For JSON: figures as they were calculated; what does not exist is null. */
  public static Map<String, @Nullable Object> exact(ResultRow row) {
    Concentration c = row.concentration();
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    out.put("residue_mg", milligrams(row.residue()));
    out.put("blank_mg", row.blankMg());
    out.put("conc_mg_l", c == null ? null : (Object) c.mgPerL());
    out.put("u_mg_l", c == null ? null : (Object) c.u());
    out.put("U_mg_l", c == null ? null : (Object) c.expanded());
    out.put("dof", c == null || Double.isInfinite(c.dof()) ? null : (Object) c.dof());
    out.put("constant", row.constantWord());
    out.put("flags", Flag.join(row.flags()));
    out.put("k", c == null ? null : (Object) c.k());
    out.put("limit_mg_l", Double.isNaN(row.limitMgPerL()) ? null : (Object) row.limitMgPerL());
    FurtherColumns.exact(row.further())
        .forEach((name, value) -> out.put(name, Double.isFinite(value) ? (Object) value : null));
    return out;
  }

  private static BigDecimal milligrams(Mass mass) {
    return BigDecimal.valueOf(mass.nanograms(), 6).stripTrailingZeros();
  }

  /** For tables: figures as people read them, in the order of {@link #NAMES}. */
  public static List<String> rounded(ResultRow row, int digits) {
    String[] out = new String[NAMES.size()];
    round(row, digits, out, 0);
    return List.of(out);
  }

  /** The same into an array from a place on; the place after the last. */
  static int round(ResultRow row, int digits, String[] out, int from) {
    Concentration c = row.concentration();
    int at = from;
    out[at++] = row.residue().toMilligrams();
    out[at++] = blank(row.blankMg());
    out[at++] = c == null ? "" : ForPeople.value(c.mgPerL(), digits, row.limitMgPerL());
    out[at++] = c == null ? "" : ForPeople.uncertainty(c.u());
    out[at++] = c == null ? "" : ForPeople.uncertainty(c.expanded());
    out[at++] = c == null ? "" : dof(c.dof());
    out[at++] = row.constantWord();
    out[at++] = Flag.join(row.flags());
    return at;
  }

  private static String blank(double milligrams) {
    return milligrams == 0 ? "0" : ForPeople.value(milligrams, 3, 0);
  }

  private static String dof(double dof) {
    return Double.isInfinite(dof) ? "inf" : Long.toString((long) Math.floor(dof));
  }
}
