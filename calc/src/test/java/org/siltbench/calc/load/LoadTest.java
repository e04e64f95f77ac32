package org.siltbench.calc.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

final class LoadTest {

  private static final Instant START = Instant.parse("2026-02-03T04:00:00Z");
  private static final Duration HOURS = Duration.ofHours(2);

  private static Instant at(long seconds) {
    return START.plusSeconds(seconds);
  }

  private static Series series(Duration step, double... secondsAndValues) {
    List<Series.Point> points = new ArrayList<>();
    for (int i = 0; i < secondsAndValues.length; i += 2) {
      points.add(new Series.Point(at((long) secondsAndValues[i]), secondsAndValues[i + 1]));
    }
    return Series.of(points, step);
  }

  private static final Series FLOW =
      series(HOURS, 0, 0.4, 1800, 1.9, 3600, 3.2, 7200, 1.1, 10800, 0.6);
  private static final Series SEDIMENT =
      series(HOURS, 0, 30, 900, 420, 2700, 610, 5400, 180, 9000, 75, 10800, 40);

  /** Check values A8. */
  @Test
  void instantaneousLoad() {
    assertEquals(104.924, LoadUnits.tonnesPerDay(25.3, 48), 5e-4);
    assertEquals(0.002696888, LoadUnits.SHORT_TONS_PER_DAY, 5e-10);
    assertEquals(0.002696888, LoadUnits.shortTonsPerDay(1, 1), 5e-10);
    assertEquals(LoadUnits.SHORT_TONS_PER_DAY_ROUNDED, LoadUnits.SHORT_TONS_PER_DAY, 4e-6);
    assertThrows(IllegalArgumentException.class, () -> LoadUnits.tonnesPerDay(Double.NaN, 1));
    assertThrows(
        IllegalArgumentException.class, () -> LoadUnits.tonnesPerDay(1, Double.POSITIVE_INFINITY));
    assertThrows(IllegalArgumentException.class, () -> LoadUnits.shortTonsPerDay(Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> LoadUnits.shortTonsPerDay(1, Double.NaN));
  }

  @Property(tries = 100)
  void bothUnitSystemsSayTheSame(
      @ForAll @DoubleRange(min = 0.01, max = 500) double cfs,
      @ForAll @DoubleRange(min = 1, max = 20_000) double c) {
    double tonnes = LoadUnits.tonnesPerDay(LoadUnits.cubicMetres(cfs), c);
    double tons = LoadUnits.shortTonsPerDay(cfs, c);
    assertEquals(tons, LoadUnits.shortTons(tonnes), 1e-9 * tons);
    assertEquals(cfs, LoadUnits.cubicFeet(LoadUnits.cubicMetres(cfs)), 1e-9 * cfs);
  }

  /** Reference: NumPy 2.4.6, trapezoid over 2 000 001 points of the product of interpolants. */
  @Test
  void eventLoadIsTheIntegralOfTheProduct() {
    EventLoad e = EventLoad.overCommonTime(FLOW, SEDIMENT);
    assertEquals(5658.84999999, e.kilograms(), 1e-4);
    assertEquals(17460, e.cubicMetres(), 1e-9);
    assertEquals(324.10366552, e.flowWeightedMean(), 1e-5);
    assertEquals(5.65884999999, e.tonnes(), 1e-7);
    assertEquals(Duration.ofSeconds(10800), e.covered());
    assertEquals(1, e.coverage());
    assertEquals(List.of(), e.gaps());
    EventLoad part = EventLoad.integrate(FLOW, SEDIMENT, at(1000), at(8000));
    assertEquals(5270.23425925, part.kilograms(), 1e-4);
    assertEquals(Duration.ofSeconds(7000), part.asked());
  }

  /** A constant flow of a constant concentration, by hand: 2 m³/s × 50 mg/L × 3600 s = 360 kg. */
  @Test
  void steadyLoadByHand() {
    EventLoad e =
        EventLoad.overCommonTime(series(HOURS, 0, 2, 3600, 2), series(HOURS, 0, 50, 3600, 50));
    assertEquals(360, e.kilograms(), 1e-9);
    assertEquals(7200, e.cubicMetres(), 1e-9);
    assertEquals(50, e.flowWeightedMean(), 1e-9);
    assertEquals(LoadUnits.tonnesPerDay(2, 50) / 24, e.tonnes(), 1e-12);
  }

  @Test
  void partsAddUpToTheWhole() {
    EventLoad whole = EventLoad.overCommonTime(FLOW, SEDIMENT);
    EventLoad a = EventLoad.integrate(FLOW, SEDIMENT, at(0), at(4321));
    EventLoad b = EventLoad.integrate(FLOW, SEDIMENT, at(4321), at(10800));
    assertEquals(whole.kilograms(), a.kilograms() + b.kilograms(), 1e-8);
    assertEquals(whole.cubicMetres(), a.cubicMetres() + b.cubicMetres(), 1e-8);
  }

  @Test
  void gapsAreStatedAndLeftOut() {
    Series patchy =
        series(Duration.ofMinutes(30), 0, 50, 1800, 50, 7200, 50, 9000, 50); // 30 to 120 min
    Series flow = series(HOURS, -600, 2, 3600, 2, 7200, 2, 12000, 2);
    EventLoad e = EventLoad.integrate(flow, patchy, at(-300), at(9600));
    assertEquals(
        List.of(
            new Series.Gap(at(-300), at(0)),
            new Series.Gap(at(1800), at(7200)),
            new Series.Gap(at(9000), at(9600))),
        e.gaps());
    assertEquals(Duration.ofSeconds(3600), e.covered());
    assertEquals(3600 / 9900.0, e.coverage(), 1e-12);
    assertEquals(360, e.kilograms(), 1e-9);
    assertEquals(Duration.ofSeconds(5400), e.gaps().get(1).length());
  }

  @Test
  void nothingInCommonIsSaid() {
    Series later = series(HOURS, 20000, 1, 21000, 1);
    assertThrows(IllegalArgumentException.class, () -> EventLoad.overCommonTime(FLOW, later));
    EventLoad none = EventLoad.integrate(FLOW, later, at(0), at(100));
    assertEquals(0, none.kilograms());
    assertTrue(Double.isNaN(none.flowWeightedMean()));
    assertEquals(0, none.coverage());
    assertThrows(
        IllegalArgumentException.class, () -> EventLoad.integrate(FLOW, SEDIMENT, at(5), at(5)));
  }

  /** Weights by another path: raise one concentration by 1 mg/L and integrate again. */
  @Test
  void weightsAreTheDerivatives() {
    EventLoad e = EventLoad.overCommonTime(FLOW, SEDIMENT);
    for (int i = 0; i < SEDIMENT.points().size(); i++) {
      List<Series.Point> raised = new ArrayList<>(SEDIMENT.points());
      Series.Point p = raised.get(i);
      raised.set(i, new Series.Point(p.at(), p.value() + 1));
      double up = EventLoad.overCommonTime(FLOW, Series.of(raised, HOURS)).kilograms();
      assertEquals(up - e.kilograms(), e.weights().get(i), 1e-8);
    }
    double all = e.weights().stream().mapToDouble(Double::doubleValue).sum();
    assertEquals(e.cubicMetres() / 1000, all, 1e-9);
  }

  @Test
  void sharedErrorsDoNotAverageOut() {
    EventLoad e = EventLoad.overCommonTime(FLOW, SEDIMENT);
    double[] u = {1, 1, 1, 1, 1, 1};
    double squares = e.weights().stream().mapToDouble(w -> w * w).sum();
    assertEquals(Math.sqrt(squares), e.uncertainty(u, 0), 1e-9);
    assertEquals(0.02 * e.kilograms(), e.uncertainty(new double[6], 0.02), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> e.uncertainty(new double[5], 0));
    assertThrows(IllegalArgumentException.class, () -> e.uncertainty(new double[7], 0));
    assertThrows(IllegalArgumentException.class, () -> e.uncertainty(u, -1));
    u[2] = -1;
    assertThrows(IllegalArgumentException.class, () -> e.uncertainty(u, 0));
  }

  @Property(tries = 100)
  void loadScalesWithConcentration(@ForAll @DoubleRange(min = 0.01, max = 1000) double k) {
    List<Series.Point> scaled =
        SEDIMENT.points().stream().map(p -> new Series.Point(p.at(), p.value() * k)).toList();
    double load = EventLoad.overCommonTime(FLOW, SEDIMENT).kilograms();
    assertEquals(
        load * k,
        EventLoad.overCommonTime(FLOW, Series.of(scaled, HOURS)).kilograms(),
        1e-9 * load * k);
  }

  @Test
  void seriesIsSortedAndLinearBetweenItsPoints() {
    List<Series.Point> shuffled = new ArrayList<>(FLOW.points());
    Collections.reverse(shuffled);
    Series s = Series.of(shuffled, HOURS);
    assertEquals(FLOW.points(), s.points());
    assertEquals(at(0), s.first());
    assertEquals(at(10800), s.last());
    assertEquals(0.4, s.at(at(0)));
    assertEquals(0.6, s.at(at(10800)));
    assertEquals(1.15, s.at(at(900)), 1e-12);
    assertEquals(0.4 + 1.5 / 3600, s.at(START.plusMillis(500)), 1e-12);
    assertTrue(Double.isNaN(s.at(at(-1))));
    assertTrue(Double.isNaN(s.at(at(10801))));
  }

  @Test
  void aStepThatIsTooLongIsAGapButItsEndsAreKnown() {
    Series s = series(Duration.ofSeconds(100), 0, 1, 100, 2, 201, 3);
    assertEquals(1.5, s.at(at(50)), 1e-12);
    assertTrue(Double.isNaN(s.at(at(150))));
    assertEquals(2, s.at(at(100)));
    assertEquals(3, s.at(at(201)));
  }

  @Test
  void seriesRefusesNonsense() {
    assertThrows(IllegalArgumentException.class, () -> Series.of(List.of(), HOURS));
    assertThrows(IllegalArgumentException.class, () -> series(HOURS, 0, 1, 0, 2));
    assertThrows(IllegalArgumentException.class, () -> series(Duration.ZERO, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> series(HOURS.negated(), 0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Series.Point(START, Double.NaN));
  }

  @Test
  void sedimentThatComesFirstTurnsClockwise() {
    Series q = series(HOURS, 0, 0, 100, 1, 200, 1, 300, 0);
    Series c = series(HOURS, 0, 10, 100, 20, 200, 10, 300, 0);
    DischargeLoop loop = DischargeLoop.of(q, c);
    // by hand: corners (0, 0.5), (1, 1), (1, 0.5), (0, 0): area 0.5, clockwise
    assertEquals(0.5, loop.area(), 1e-12);
    assertEquals(DischargeLoop.Turn.CLOCKWISE, loop.turn());
    Series late = series(HOURS, 0, 0, 100, 10, 200, 20, 300, 10);
    assertEquals(DischargeLoop.Turn.ANTICLOCKWISE, DischargeLoop.of(q, late).turn());
    assertEquals(-0.5, DischargeLoop.of(q, late).area(), 1e-12);
    assertEquals(4, loop.points().size());
    assertEquals(new DischargeLoop.Point(at(100), 1, 20), loop.points().get(1));
  }

  @Test
  void noLoopWhereThereIsNone() {
    Series q = series(HOURS, 0, 0, 100, 1, 200, 2, 300, 1);
    Series same = series(HOURS, 0, 10, 100, 20, 200, 30, 300, 20);
    assertEquals(DischargeLoop.Turn.NONE, DischargeLoop.of(q, same).turn());
    Series flat = series(HOURS, 0, 10, 100, 10, 200, 10);
    assertEquals(0, DischargeLoop.of(q, flat).area());
    Series two = series(HOURS, 0, 10, 100, 20);
    assertEquals(DischargeLoop.Turn.NONE, DischargeLoop.of(q, two).turn());
    Series outside = series(HOURS, 900, 10, 1000, 20);
    assertEquals(0, DischargeLoop.of(q, outside).points().size());
    Series one = series(HOURS, 0, 0.0, 100, 1, 200, 0.97, 300, 0);
    Series thin = series(HOURS, 0, 0.0, 100, 1, 200, 0.99, 300, 0);
    assertEquals(DischargeLoop.Turn.NONE, DischargeLoop.of(one, thin).turn());
    assertFalse(Math.abs(DischargeLoop.of(one, thin).area()) > DischargeLoop.NO_LOOP);
  }

  /** The axes are scaled from their least value, so a base flow changes nothing. */
  @Test
  void aBaseFlowDoesNotChangeTheLoop() {
    Series q = series(HOURS, 0, 5, 100, 7, 200, 7, 300, 5);
    Series c = series(HOURS, 0, 110, 100, 120, 200, 110, 300, 100);
    assertEquals(0.5, DischargeLoop.of(q, c).area(), 1e-12);
    Series three = series(HOURS, 0, 0, 100, 1, 200, 1);
    Series early = series(HOURS, 0, 0, 100, 1, 200, 0);
    assertEquals(0.5, DischargeLoop.of(three, early).area(), 1e-12);
  }

  @Test
  void twoStretchesWithoutDataStayTwo() {
    Series patchy = series(Duration.ofSeconds(60), 0, 1, 50, 1, 200, 1, 250, 1, 400, 1, 450, 1);
    Series flow = series(HOURS, 0, 1, 450, 1);
    assertEquals(
        List.of(new Series.Gap(at(50), at(200)), new Series.Gap(at(250), at(400))),
        EventLoad.overCommonTime(flow, patchy).gaps());
  }
}
