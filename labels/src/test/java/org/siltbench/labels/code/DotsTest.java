package org.siltbench.labels.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class DotsTest {

  @Test
  void twoDotsAreEnoughUpToThreeHundredDpi() {
    assertEquals(2, new Dots(203).fewest());
    assertEquals(2, new Dots(300).fewest());
  }

  @Test
  void finePrintersNeedMoreDotsForTheSameModule() {
    assertEquals(4, new Dots(600).fewest());
    assertEquals(8, new Dots(1200).fewest());
  }

  @Property
  void snappingMovesByHalfADotAtMost(
      @ForAll @IntRange(min = 150, max = 2400) int dpi, @ForAll @DoubleRange(max = 300) double at) {
    Dots dots = new Dots(dpi);
    double snapped = dots.snap(at);
    assertTrue(Math.abs(snapped - at) <= dots.dot() / 2 + 1e-9);
    assertEquals(Math.rint(snapped / dots.dot()), snapped / dots.dot(), 1e-6);
  }

  @Test
  void aPrinterWithoutDotsIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Dots(72));
  }
}
