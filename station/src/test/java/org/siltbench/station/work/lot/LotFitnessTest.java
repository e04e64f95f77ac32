package org.siltbench.station.work.lot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LotFitnessTest {

  @ParameterizedTest
  @CsvSource({
    "glass-fibre,GLASS_FIBRE",
    "glass fibre without binder,GLASS_FIBRE",
    "Glass fibre no organic binder,GLASS_FIBRE",
    "glass fibre with acrylic binder,BOUND_GLASS_FIBRE",
    "Quartz,QUARTZ_FIBRE",
    "cellulose nitrate membrane,CELLULOSE",
    "polycarbonate,MEMBRANE",
    "PTFE,MEMBRANE",
  })
  void a_persons_words_are_understood(String words, String material) {
    assertEquals(material, LotFitness.material(words).name());
  }

  @Test
  void what_says_nothing_is_nothing() {
    assertNull(LotFitness.material(""));
    assertNull(LotFitness.material("white"));
  }
}
