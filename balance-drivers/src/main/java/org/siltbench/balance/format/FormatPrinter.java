package org.siltbench.balance.format;

import org.siltbench.balance.format.LineFormat.NumberShape;
import org.siltbench.balance.format.LineFormat.Talk;
import org.siltbench.balance.format.LineFormat.Units;

/** Writes the text file of a line format. */
final class FormatPrinter {

  private final StringBuilder out = new StringBuilder(FormatText.FIRST_LINE).append('\n');

  private FormatPrinter() {}

  static String print(LineFormat format) {
    FormatPrinter p = new FormatPrinter();
    p.put("name", format.name());
    String ends = format.ends().text();
    p.put("ends", ends.isEmpty() ? "any" : ControlText.print(ends));
    p.put("line", PartText.print(format.line()));
    if (format.length() > 0) {
      p.put("length", Integer.toString(format.length()));
    }
    p.number(format.number());
    p.units(format.units());
    format.marks().forEach(m -> p.put("mark " + Quoted.quote(m.text()), m.meaning().word()));
    format.texts().forEach(m -> p.put("text " + Quoted.quote(m.text()), m.meaning().word()));
    p.talk(format.talk());
    return p.out.toString();
  }

  private void put(String key, String value) {
    out.append(key).append(": ").append(value).append('\n');
  }

  private void number(NumberShape number) {
    put("point", number.point() == NumberShape.EITHER ? "either" : String.valueOf(number.point()));
    String least = Integer.toString(number.least());
    put("decimals", number.least() == number.most() ? least : least + "-" + number.most());
  }

  private void units(Units units) {
    units.texts().forEach(u -> put("unit " + Quoted.quote(u.text()), u.unit().symbol()));
    MassUnit supplied = units.supplied();
    if (supplied != null) {
      put("supply", supplied.symbol());
    }
    if (units.missing() != Meaning.NOTHING) {
      put("no unit", units.missing().word());
    }
    if (units.firstOnly()) {
      put("units", FormatKeys.FIRST_ONLY);
    }
  }

  private void talk(Talk talk) {
    put("talks", talk.how().words());
    if (!talk.ask().isEmpty()) {
      put("ask", ControlText.print(talk.ask()));
    }
    if (!talk.tare().isEmpty()) {
      put("tare", ControlText.print(talk.tare()));
    }
  }
}
