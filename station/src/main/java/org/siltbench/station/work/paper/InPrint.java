package org.siltbench.station.work.paper;

import java.math.BigDecimal;
import org.siltbench.calc.id.FilterId;
import org.siltbench.calc.quantity.Mass;

/** Values as the papers show them: IDs in groups, a true minus, every displayed digit. */
public final class InPrint {

  private InPrint() {}

  /** A filter ID in the groups that its bag shows; any other text as it is. */
  public static String id(String filter) {
    try {
      return new FilterId(filter).grouped();
    } catch (IllegalArgumentException e) {
      return filter;
    }
  }

  /** A number with a true minus, or a plus; nothing before a zero. */
  public static String signed(String number) {
    if (number.isEmpty() || isZero(number)) {
      return number.replace("-", "");
    }
    return number.startsWith("-") ? minus(number) : "+" + number;
  }

  /** A number with a true minus. */
  public static String minus(String number) {
    return number.startsWith("-") ? "−" + number.substring(1) : number;
  }

  private static boolean isZero(String number) {
    return number.chars().noneMatch(c -> c >= '1' && c <= '9');
  }

  /** A number with as many decimals as another one shows. */
  public static String alike(String number, String shown) {
    int places = places(shown);
    if (number.isEmpty() || places(number) >= places) {
      return number;
    }
    return new BigDecimal(number).setScale(places).toPlainString();
  }

  /** A residue in milligrams with the decimals of the masses it is the difference of, in grams. */
  public static String residue(Mass residue, String grams) {
    String exact = residue.toMilligrams();
    int wanted = Math.max(0, places(grams) - 3);
    return minus(
        places(exact) >= wanted ? exact : new BigDecimal(exact).setScale(wanted).toPlainString());
  }

  /** A stable word such as {@code field-blank} in plain words. */
  public static String words(String code) {
    return code.replace('-', ' ');
  }

  private static int places(String number) {
    int point = number.indexOf('.');
    return point < 0 ? 0 : number.length() - point - 1;
  }
}
