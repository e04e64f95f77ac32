package org.siltbench.calc.duplicates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.siltbench.calc.duplicates.DuplicateRule.Basis.DIFFERENCE;
import static org.siltbench.calc.duplicates.DuplicateRule.Basis.PERCENT;
import static org.siltbench.calc.duplicates.DuplicateRule.Reading.DIFFERENCE_WITHIN_PERCENT_OF_MEAN;
import static org.siltbench.calc.duplicates.DuplicateRule.Reading.EACH_WITHIN_PERCENT_OF_MEAN;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class DuplicatesTest {

  /** Check values A7. */
  @ParameterizedTest
  @CsvSource({"12.0,12.6,4.88", "101,95,6.12", "44,47,6.59"})
  void relativePercentDifference(double a, double b, double percent) {
    assertEquals(percent, new DuplicatePair(a, b).relativePercentDifference(), 0.005);
  }

  @Test
  void edgesOfThePercentage() {
    assertEquals(0, new DuplicatePair(0, 0).relativePercentDifference());
    assertEquals(Double.POSITIVE_INFINITY, new DuplicatePair(-1, 1).relativePercentDifference());
    assertEquals(
        new DuplicatePair(-10, -12).relativePercentDifference(),
        new DuplicatePair(10, 12).relativePercentDifference());
    assertThrows(IllegalArgumentException.class, () -> new DuplicatePair(Double.NaN, 1));
    assertThrows(
        IllegalArgumentException.class, () -> new DuplicatePair(1, Double.NEGATIVE_INFINITY));
  }

  /** SM 2540 D 3.c, 21st edition: "agree within 5 % of their average weight", read both ways. */
  @Test
  void bothReadingsOfTheFivePercentRule() {
    DuplicateRule strict = DuplicateRule.ofPercent(DIFFERENCE_WITHIN_PERCENT_OF_MEAN, 5);
    DuplicateRule wide = DuplicateRule.ofPercent(EACH_WITHIN_PERCENT_OF_MEAN, 5);
    DuplicatePair pair = new DuplicatePair(101, 95); // 6.12 %
    assertFalse(strict.judge(pair).agrees());
    assertTrue(wide.judge(pair).agrees());
    assertEquals(5, strict.judge(pair).limit());
    assertEquals(10, wide.judge(pair).limit());
    assertEquals(PERCENT, wide.judge(pair).basis());
    DuplicatePair onTheLine = new DuplicatePair(39, 41);
    assertTrue(strict.judge(onTheLine).agrees());
    assertFalse(wide.judge(new DuplicatePair(37.9, 42.1)).agrees());
  }

  @Test
  void nearTheReportingLimitTheDifferenceCounts() {
    DuplicateRule rule = new DuplicateRule(DIFFERENCE_WITHIN_PERCENT_OF_MEAN, 20, 2, 5, 1);
    DuplicateRule.Verdict low = rule.judge(new DuplicatePair(3, 5));
    assertEquals(new DuplicateRule.Verdict(true, DIFFERENCE, 2, 2), low);
    assertFalse(rule.judge(new DuplicatePair(3, 5.01)).agrees());
    assertEquals(PERCENT, rule.judge(new DuplicatePair(10, 10)).basis()); // mean of 5 RL
    assertEquals(DIFFERENCE, rule.judge(new DuplicatePair(9.9, 10)).basis());
    assertEquals(DIFFERENCE, rule.judge(new DuplicatePair(-1, -0.5)).basis());
  }

  @Test
  void ruleRefusesNonsense() {
    assertThrows(
        IllegalArgumentException.class,
        () -> DuplicateRule.ofPercent(EACH_WITHIN_PERCENT_OF_MEAN, 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> new DuplicateRule(EACH_WITHIN_PERCENT_OF_MEAN, 5, -1, 5, 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> new DuplicateRule(EACH_WITHIN_PERCENT_OF_MEAN, 5, 1, -5, 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> new DuplicateRule(EACH_WITHIN_PERCENT_OF_MEAN, 5, 1, 5, -1));
  }

  /** s = √(Σd²/2n) by hand: d 2, 4 -> √(20/4); and each pair is a group of two, pooled. */
  @Test
  void deviationFromPairs() {
    List<DuplicatePair> pairs = List.of(new DuplicatePair(10, 12), new DuplicatePair(54, 50));
    assertEquals(Math.sqrt(5), DuplicatePair.deviation(pairs), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> DuplicatePair.deviation(List.of()));
  }

  @Test
  void deviationFromPairsFindsTheTrueOne() {
    Random random = new Random(3);
    List<DuplicatePair> pairs =
        Stream.generate(
                () -> new DuplicatePair(random.nextGaussian() * 0.3, random.nextGaussian() * 0.3))
            .limit(20_000)
            .toList();
    assertEquals(0.3, DuplicatePair.deviation(pairs), 0.3 * 4 / Math.sqrt(40_000));
  }

  @Property(tries = 200)
  void orderAndUnitDoNotMatter(
      @ForAll @DoubleRange(min = 0.1, max = 1000) double a,
      @ForAll @DoubleRange(min = 0.1, max = 1000) double b) {
    double percent = new DuplicatePair(a, b).relativePercentDifference();
    assertEquals(percent, new DuplicatePair(b, a).relativePercentDifference(), 1e-9);
    assertEquals(percent, new DuplicatePair(a * 1000, b * 1000).relativePercentDifference(), 1e-9);
    assertEquals((a + b) / 2, new DuplicatePair(a, b).mean(), 1e-9);
  }
}
