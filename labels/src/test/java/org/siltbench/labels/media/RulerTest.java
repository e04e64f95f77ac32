package org.siltbench.labels.media;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class RulerTest {

  @Test
  void rulersFitEveryBuiltInPage() {
    for (Media media : MediaCatalog.builtIn()) {
      Ruler ruler = Ruler.of(media);
      assertTrue(ruler.left() + ruler.across() <= media.pageWidth(), media.name());
      assertTrue(ruler.top() + ruler.down() <= media.pageHeight(), media.name());
    }
  }

  @Test
  void aTrueRulerNeedsNoCalibration() {
    Ruler ruler = Ruler.of(MediaCatalog.find("sheet-a4-70x37"));
    Calibration next =
        ruler.calibration(List.of(ruler.across(), ruler.down(), ruler.left(), ruler.top()));
    assertEquals(0, next.moveRight(), 1e-12);
    assertEquals(1, next.scaleDown(), 1e-12);
  }

  @Test
  void aPrinterThatShrinksIsStretched() {
    Ruler ruler = Ruler.of(MediaCatalog.find("sheet-a4-70x37"));
    double all = 0.99;
    Calibration next =
        ruler.calibration(
            List.of(
                ruler.across() * all, ruler.down() * all, ruler.left() * all, ruler.top() * all));
    assertEquals(1 / all, next.scaleAcross(), 1e-12);
    assertEquals(0, next.moveRight(), 1e-9);
  }
}
