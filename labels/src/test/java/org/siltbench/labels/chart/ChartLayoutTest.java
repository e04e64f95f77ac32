package org.siltbench.labels.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.siltbench.calc.reason.Reason;

class ChartLayoutTest {

  private static final OffsetDateTime START = OffsetDateTime.parse("2026-03-12T14:00:00+01:00");

  private static TimeChart chart(List<Double> values, int minutes) {
    List<TimeChart.Point> points = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      points.add(
          new TimeChart.Point(
              START.plusMinutes((long) i * minutes), values.get(i), 2, values.get(i) < 2));
    }
    return new TimeChart(
        Reason.plain("Solids"), "mg/L", List.of(new TimeChart.Series("ford", points)));
  }

  private static List<Mark.Dot> dots(List<Mark> marks, int dropLegend) {
    List<Mark.Dot> out = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark instanceof Mark.Dot dot) {
        out.add(dot);
      }
    }
    return out.subList(0, out.size() - dropLegend);
  }

  @Property(tries = 200)
  void everyMarkLiesInItsBox(
      @ForAll @Size(min = 1, max = 40) List<@DoubleRange(min = -50, max = 20000) Double> values,
      @ForAll @IntRange(min = 1, max = 20000) int minutes) {
    for (Mark mark : ChartLayout.of(chart(values, minutes), 160, 60)) {
      if (mark instanceof Mark.Line line) {
        assertTrue(
            line.x1() >= 0 && line.x2() <= 160 && line.y1() >= 0 && line.y2() <= 60, "" + line);
      } else if (mark instanceof Mark.Words words) {
        assertTrue(
            words.x() >= 0 && words.x() <= 160 && words.y() >= 0 && words.y() <= 60, "" + words);
      }
    }
  }

  @Test
  void aHigherValueStandsHigherAndBarsHaveTheLengthOfTheUncertainty() {
    List<Mark> marks = ChartLayout.of(chart(List.of(10.0, 20.0, 40.0), 15), 160, 60);
    List<Mark.Dot> dots = dots(marks, 1);
    double perUnit = (dots.get(0).y() - dots.get(1).y()) / 10;
    assertEquals(perUnit * 20, dots.get(1).y() - dots.get(2).y(), 1e-9);
    boolean found =
        marks.stream()
            .anyMatch(
                m ->
                    m instanceof Mark.Line l
                        && l.x1() == dots.get(0).x()
                        && l.x2() == dots.get(0).x()
                        && Math.abs(Math.abs(l.y2() - l.y1()) - 4 * perUnit) < 1e-9);
    assertTrue(found, "a bar of twice the uncertainty");
  }

  @Test
  void aResultBelowTheLimitIsHollow() {
    List<Mark.Dot> dots = dots(ChartLayout.of(chart(List.of(1.0, 5.0), 15), 160, 60), 1);
    assertEquals(Mark.Shape.RING, dots.get(0).shape());
    assertEquals(Mark.Shape.DISC, dots.get(1).shape());
  }

  @Test
  void aCheckBeyondTheLimitHasAnotherShape() {
    ControlChart control =
        new ControlChart(
            Reason.plain("W100"),
            "mg",
            0,
            null,
            null,
            0.1,
            List.of(new ControlChart.Point(START, 0.05), new ControlChart.Point(START, -0.2)));
    List<Mark.Dot> dots = dots(ChartLayout.of(control, 160, 40), 0);
    assertEquals(Mark.Shape.DISC, dots.get(0).shape());
    assertEquals(Mark.Shape.FRAME, dots.get(1).shape());
  }

  @Test
  void anEmptyChartSaysSo() {
    List<Mark> marks = ChartLayout.of(new TimeChart(Reason.plain("t"), "u", List.of()), 100, 50);
    assertTrue(
        marks.stream().anyMatch(m -> m instanceof Mark.Words w && w.text().contains("nothing")));
  }

  @Test
  void ticksAreRoundAndInAsManyDecimalsAsTheyNeed() {
    Scale scale = Scale.covering(0, 0.37, 5, 0, 100);
    assertEquals(0.1, scale.step(), 1e-12);
    assertEquals("0.3", scale.text(scale.ticks().get(3)));
    assertEquals("−0.1", Scale.covering(-0.1, 0.1, 4, 0, 1).text(-0.1).substring(0, 4));
    assertEquals("20000", Scale.covering(0, 20000, 4, 0, 1).text(20000));
  }
}
