package org.siltbench.labels.media;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CalibrationTest {

  /** A printer that stretches by a factor and shifts by an offset prints true after one ruler. */
  @Property(tries = 500)
  void oneRulerMakesAnyPrinterTrue(
      @ForAll @DoubleRange(min = 0.97, max = 1.03) double factor,
      @ForAll @DoubleRange(min = -5, max = 5) double offset,
      @ForAll @DoubleRange(min = 0.99, max = 1.01) double oldScale,
      @ForAll @DoubleRange(min = -2, max = 2) double oldMove,
      @ForAll @DoubleRange(min = 0, max = 290) double anywhere) {
    Calibration old = new Calibration(oldMove, oldMove, oldScale, oldScale);
    double length = 190;
    double cross = 10;
    Calibration.Measured measured =
        new Calibration.Measured(
            length,
            length * oldScale * factor,
            cross,
            (cross * oldScale + oldMove) * factor + offset);
    Calibration next = Calibration.measured(old, measured, measured);
    double printed = (anywhere * next.scaleAcross() + next.moveRight()) * factor + offset;
    assertEquals(anywhere, printed, 1e-9);
  }

  @Test
  void aMeasuredRulerThatCannotBeTrueIsRefused() {
    Calibration.Measured wrong = new Calibration.Measured(190, 100, 10, 10);
    assertThrows(
        IllegalArgumentException.class, () -> Calibration.measured(Calibration.NONE, wrong, wrong));
  }
}
