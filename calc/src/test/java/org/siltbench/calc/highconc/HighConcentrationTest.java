package org.siltbench.calc.highconc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class HighConcentrationTest {

  /** Check values A2. */
  @ParameterizedTest
  @CsvSource({
    "1000,1.000623,1000.62",
    "7950,1.004975,7989.55",
    "16000,1.010063,16161.00",
    "50000,1.032132,51606.62",
    "100000,1.066398,106639.84"
  })
  void massRatioToConcentration(double ppm, double factor, double mgL) {
    assertEquals(factor, MassRatio.CONVENTIONAL.factor(ppm), 6e-7);
    assertEquals(mgL, MassRatio.CONVENTIONAL.toMilligramsPerLitre(ppm), 6e-3);
    assertEquals(ppm, MassRatio.CONVENTIONAL.toPartsPerMillion(mgL), 6e-3);
  }

  /** The revised table (USGS OSW memo 93.21), ranges from memory (check values A2). */
  @ParameterizedTest
  @CsvSource({
    "0,1.00",
    "7950,1.00",
    "7999,1.00",
    "8000,1.01",
    "23700,1.01",
    "23800,1.02",
    "39100,1.02",
    "39200,1.03",
    "54300,1.03",
    "54400,1.04",
    "69200,1.04",
    "69300,1.05",
    "83700,1.05"
  })
  void revisedTable(double ppm, double factor) {
    assertEquals(factor, RevisedTable.factor(ppm));
    assertEquals(ppm * factor, RevisedTable.toMilligramsPerLitre(ppm));
  }

  @Property(tries = 500)
  void theTableLiesWithinHalfAPercentOfTheEquation(
      @ForAll @DoubleRange(min = 1, max = 83_700) double ppm) {
    double ratio =
        RevisedTable.toMilligramsPerLitre(ppm) / MassRatio.CONVENTIONAL.toMilligramsPerLitre(ppm);
    assertEquals(1, ratio, 0.0051);
  }

  @Property(tries = 500)
  void massRatioTurnsBackAndGrows(
      @ForAll @DoubleRange(min = 0, max = 1e6) double ppm,
      @ForAll @DoubleRange(min = 0.95, max = 1.05) double rw,
      @ForAll @DoubleRange(min = 1.2, max = 4) double rs) {
    MassRatio r = new MassRatio(rw, rs);
    double c = r.toMilligramsPerLitre(ppm);
    assertEquals(ppm, r.toPartsPerMillion(Math.min(c, rs * 1e6)), 1e-6 * 1e3);
    assertTrue(c <= rs * 1e6 * (1 + 1e-12));
    assertTrue(ppm == 0 || c > ppm * rw * (1 - 1e-12));
  }

  /** Independent path: volumes of water and grain add up. */
  @Property(tries = 300)
  void theEquationIsTheSumOfVolumes(
      @ForAll @DoubleRange(min = 0, max = 400) double sediment,
      @ForAll @DoubleRange(min = 0.95, max = 1.05) double rw) {
    MassRatio r = new MassRatio(rw, 2.65);
    SampleByMass s = new SampleByMass(sediment, 500);
    double litres = ((500 - sediment) / rw + sediment / 2.65) / 1000;
    assertEquals(litres * 1000, s.millilitres(r), 1e-9);
    assertEquals(sediment * 1000 / litres, s.milligramsPerLitre(r), 1e-6);
    assertEquals(s.milligramsPerLitre(r), r.toMilligramsPerLitre(s.partsPerMillion()), 1e-5);
  }

  @Test
  void limitsOfTheMassRatio() {
    assertEquals(2.65e6, MassRatio.CONVENTIONAL.toMilligramsPerLitre(1e6), 1e-3);
    assertEquals(0, MassRatio.CONVENTIONAL.toMilligramsPerLitre(0));
    MassRatio r = MassRatio.CONVENTIONAL;
    assertThrows(IllegalArgumentException.class, () -> r.toMilligramsPerLitre(-1));
    assertThrows(IllegalArgumentException.class, () -> r.toMilligramsPerLitre(1.1e6));
    assertThrows(IllegalArgumentException.class, () -> r.toPartsPerMillion(-1));
    assertThrows(IllegalArgumentException.class, () -> r.toPartsPerMillion(2.7e6));
    assertThrows(IllegalArgumentException.class, () -> r.factor(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new MassRatio(0.5, 2.65));
    assertThrows(IllegalArgumentException.class, () -> new MassRatio(1, 1));
    assertThrows(IllegalArgumentException.class, () -> new MassRatio(1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> RevisedTable.factor(83_701));
    assertThrows(IllegalArgumentException.class, () -> RevisedTable.factor(-1));
    assertThrows(IllegalArgumentException.class, () -> new SampleByMass(2, 1));
    assertThrows(IllegalArgumentException.class, () -> new SampleByMass(0, 0));
  }

  @Test
  void sedimentTakesVolume() {
    assertEquals(0.01, SedimentVolume.litres(26_500, 2.65), 1e-12);
    assertEquals(26_500 / 1.01, SedimentVolume.concentration(26_500, 1, 2.65), 1e-9);
    assertEquals(-0.5, SedimentVolume.concentration(-0.25, 0.5, 2.65), 1e-15);
    assertThrows(IllegalArgumentException.class, () -> SedimentVolume.concentration(1, 0, 2.65));
    assertThrows(
        IllegalArgumentException.class, () -> SedimentVolume.concentration(Double.NaN, 1, 2.65));
    assertThrows(IllegalArgumentException.class, () -> SedimentVolume.litres(-1, 2.65));
    assertThrows(IllegalArgumentException.class, () -> SedimentVolume.litres(1, 0));
  }

  /** Volume of filtrate and mass ratio say the same of one bottle. */
  @Property(tries = 200)
  void filtrateAndMassRatioAgree(@ForAll @DoubleRange(min = 0, max = 200) double grams) {
    SampleByMass s = new SampleByMass(grams, 1000);
    double filtrate = (1000 - grams) / 1000;
    assertEquals(
        s.milligramsPerLitre(MassRatio.CONVENTIONAL),
        SedimentVolume.concentration(grams * 1000, filtrate, 2.65),
        1e-6);
  }

  @Test
  void dissolvedSolidsOfTheWaterThatDriedUp() {
    DissolvedSolids d = DissolvedSolids.of(550, 500, 10, 0.1, 0.002);
    assertEquals(50, d.milligrams(), 1e-12);
    assertEquals(Math.hypot(0.1 * 10, 500 * 0.002), d.uncertainty(), 1e-12);
    assertEquals(0.1, d.shareOfSediment(), 1e-12);
    assertFalse(d.neededByAstm());
    assertTrue(DissolvedSolids.of(549, 500, 0, 0.1, 0).neededByAstm());
    assertEquals(
        Double.POSITIVE_INFINITY, DissolvedSolids.of(50, 500, 0, 0.1, 0).shareOfSediment());
    assertEquals(
        Double.POSITIVE_INFINITY, DissolvedSolids.of(10, 500, 0, 0.1, 0).shareOfSediment());
    assertEquals(0, DissolvedSolids.of(-0.2, 0, 0, 0.1, 0).shareOfSediment());
  }

  @Test
  void dissolvedSolidsRefuseNonsense() {
    assertThrows(IllegalArgumentException.class, () -> DissolvedSolids.of(Double.NaN, 1, 0, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> DissolvedSolids.of(1, -1, 0, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> DissolvedSolids.of(1, 1, -1, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> DissolvedSolids.of(1, 1, 0, -1, 0));
    assertThrows(IllegalArgumentException.class, () -> DissolvedSolids.of(1, 1, 0, 1, -1));
  }
}
