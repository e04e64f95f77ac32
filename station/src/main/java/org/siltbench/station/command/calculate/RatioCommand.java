package org.siltbench.station.command.calculate;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.highconc.MassRatio;
import org.siltbench.calc.highconc.RevisedTable;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import picocli.CommandLine.Option;

/** {@code ratio}. */
final class RatioCommand implements Task {

  private static final int DIGITS = 6;

  @Option(names = "--ppm", paramLabel = "N", description = "a mass ratio, parts per million")
  private @Nullable Double ppm;

  @Option(names = "--mg-l", paramLabel = "N", description = "a concentration, mg/L")
  private @Nullable Double concentration;

  @Option(
      names = "--water",
      paramLabel = "KG-L",
      description = "density of the water, kg/L; default: ${DEFAULT-VALUE}")
  private double water = MassRatio.CONVENTIONAL.waterDensity();

  @Option(
      names = "--sediment",
      paramLabel = "KG-L",
      description = "density of the grains, kg/L; default: ${DEFAULT-VALUE}")
  private double sediment = MassRatio.CONVENTIONAL.sedimentDensity();

  @Override
  public int run(Session session) {
    if ((ppm == null) == (concentration == null)) {
      throw new Problem.WrongUse("One figure is turned into the other.", "Give --ppm or --mg-l.");
    }
    try {
      MassRatio ratio = new MassRatio(water, sediment);
      double parts = ppm == null ? ratio.toPartsPerMillion(given(concentration)) : given(ppm);
      tell(session, parts, ratio.toMilligramsPerLitre(parts));
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(
          "That cannot be turned: " + e.getMessage() + '.',
          "A mass ratio lies from 0 to 1000000 ppm, grains are denser than water.");
    }
    return 0;
  }

  private static double given(@Nullable Double value) {
    return value == null ? Double.NaN : value;
  }

  private static void tell(Session session, double parts, double milligrams) {
    boolean inTable = parts <= RevisedTable.LAST;
    Map<String, @Nullable Object> document = new LinkedHashMap<>();
    document.put("ppm", parts);
    document.put("mg_l", milligrams);
    document.put("table_mg_l", inTable ? (Object) RevisedTable.toMilligramsPerLitre(parts) : null);
    document.put("table_factor", inTable ? (Object) RevisedTable.factor(parts) : null);
    session.document(document);
    session.fact(
        ForPeople.value(parts, DIGITS, 0)
            + " ppm by mass are "
            + ForPeople.value(milligrams, DIGITS, 0)
            + " mg/L by the equation.");
    session.fact(
        inTable
            ? "The revised table in steps of 0.01 (water year 1972 on; for agreement with old"
                + " records) says "
                + ForPeople.value(RevisedTable.toMilligramsPerLitre(parts), DIGITS, 0)
                + " mg/L."
            : "The revised table ends before that.");
  }
}
