package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.siltbench.balance.format.LineFormat.MarkText;
import org.siltbench.balance.format.LineFormat.NumberShape;
import org.siltbench.balance.format.LineFormat.UnitText;
import org.siltbench.calc.quantity.Mass;

/** Writes lines in a format, as a balance would: for the practice balance. */
public final class LineWriter {

  private static final int NUMBER_WIDTH = 11;

  private final LineFormat format;
  private final UnitText unit;
  private final int decimals;

  /** Lines of a balance with the given smallest step. */
  public LineWriter(LineFormat format, double stepMg) {
    this.format = format;
    this.unit = unit(format);
    BigDecimal step = BigDecimal.valueOf(stepMg).movePointRight(6 - unit.unit().exponent());
    int fits = Math.max(0, step.stripTrailingZeros().scale());
    this.decimals = Math.max(format.number().least(), Math.min(format.number().most(), fits));
  }

  private static UnitText unit(LineFormat format) {
    MassUnit supplied = format.units().supplied();
    if (format.units().texts().isEmpty() && supplied != null) {
      return new UnitText("", supplied);
    }
    return format.units().texts().get(0);
  }

  /** One line with its end. */
  public byte[] line(Mass mass, boolean atRest) {
    StringBuilder out = new StringBuilder();
    for (Part part : format.line()) {
      put(part, mass, atRest, out);
    }
    String end = format.ends().text();
    return out.append(end.isEmpty() ? "\r\n" : end).toString().getBytes(ISO_8859_1);
  }

  private void put(Part part, Mass mass, boolean atRest, StringBuilder out) {
    if (part instanceof Part.Text t) {
      out.append(t.text());
    } else if (part instanceof Part.Gap) {
      out.append(' ');
    } else if (part instanceof Part.Sign) {
      out.append(mass.isNegative() ? '-' : '+');
    } else if (part instanceof Part.Numeral) {
      out.append(number(mass, out));
    } else if (part instanceof Part.UnitField) {
      out.append(unit.text().isEmpty() ? "" : " ".repeat(afterNumber(out)) + unit.text());
    } else if (part instanceof Part.MarkField) {
      out.append(mark(atRest));
    } else {
      putIgnored(part, out);
    }
  }

  private static int afterNumber(StringBuilder out) {
    return Character.isDigit(out.charAt(out.length() - 1)) ? 1 : 0;
  }

  private void putIgnored(Part part, StringBuilder out) {
    if (part instanceof Part.Any any) {
      out.append("0".repeat(any.count()));
    } else if (part instanceof Part.Check check) {
      byte[] so = out.toString().getBytes(ISO_8859_1);
      out.append(String.format(Locale.ROOT, "%02X", check.sum().of(so, check.from(), so.length)));
    } else if (!(part instanceof Part.Blanks)) {
      out.append('0');
    }
  }

  private String number(Mass mass, StringBuilder out) {
    BigDecimal value = new BigDecimal(mass.nanograms()).movePointLeft(unit.unit().exponent());
    BigDecimal scaled = value.divide(BigDecimal.valueOf(unit.unit().factor()));
    String text = scaled.abs().setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
    String shown = format.number().point() == NumberShape.EITHER ? text : comma(text);
    return padding(out, shown) + shown;
  }

  private String comma(String text) {
    return text.replace('.', format.number().point());
  }

  /** Blanks before the number where the format allows them. */
  private String padding(StringBuilder out, String shown) {
    int at = format.line().indexOf(new Part.Numeral());
    boolean room = at > 0 && format.line().get(at - 1) instanceof Part.Blanks;
    int wide = format.length() > 0 ? 0 : NUMBER_WIDTH - shown.length();
    return room && out.length() < NUMBER_WIDTH ? " ".repeat(Math.max(0, wide)) : "";
  }

  private String mark(boolean atRest) {
    Meaning wanted = atRest ? Meaning.STABLE : Meaning.MOVING;
    return format.marks().stream()
        .filter(m -> m.meaning() == wanted)
        .findFirst()
        .or(() -> format.marks().stream().filter(m -> m.meaning() == Meaning.NOTHING).findFirst())
        .map(MarkText::text)
        .orElse("");
  }
}
