package org.siltbench.balance.format;

import java.util.List;
import org.siltbench.balance.format.LineFormat.NumberShape;
import org.siltbench.balance.format.LineFormat.Talk;
import org.siltbench.balance.format.LineFormat.UnitText;
import org.siltbench.balance.format.LineFormat.Units;

/** The format of a bare link text: one number, optional sign, a unit. */
final class StandardFormat {

  private static final List<UnitText> UNITS =
      List.of(
          new UnitText("g", MassUnit.GRAM),
          new UnitText("mg", MassUnit.MILLIGRAM),
          new UnitText("kg", MassUnit.KILOGRAM),
          new UnitText("ug", MassUnit.MICROGRAM),
          new UnitText("\u00B5g", MassUnit.MICROGRAM),
          new UnitText("\u00C2\u00B5g", MassUnit.MICROGRAM));

  static final LineFormat FORMAT =
      new LineFormat(
          "standard",
          Terminator.ANY,
          List.of(
              new Part.Blanks(),
              new Part.Sign(),
              new Part.Blanks(),
              new Part.Numeral(),
              new Part.Blanks(),
              new Part.UnitField(false),
              new Part.Blanks()),
          0,
          NumberShape.ANY,
          new Units(UNITS, null, Meaning.NOTHING, true),
          List.of(),
          List.of(),
          Talk.BY_ITSELF);

  private StandardFormat() {}
}
