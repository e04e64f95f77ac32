package org.siltbench.station.work.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.siltbench.calc.id.BatchCode;
import org.siltbench.calc.id.BenchCode;
import org.siltbench.calc.id.FilterId;
import org.siltbench.calc.quantity.Mass;

class InPrintTest {

  @Test
  void anIdStandsInTheGroupsOfItsBag() {
    FilterId id = BatchCode.of(new BenchCode("K3DF"), 7).filters(1).get(0);
    assertEquals(id.grouped(), InPrint.id(id.text()));
    assertEquals("W100", InPrint.id("W100"));
  }

  @Test
  void aSignIsATrueMinusOrAPlusAndAZeroHasNone() {
    assertEquals("−0.013", InPrint.signed("-0.013"));
    assertEquals("+0.007", InPrint.signed("0.007"));
    assertEquals("0.00", InPrint.signed("-0.00"));
  }

  @Test
  void digitsThatTheBalanceShowedStay() {
    assertEquals("0.00000", InPrint.alike("0", "0.12874"));
    assertEquals("0.00002", InPrint.alike("0.00002", "0.1287"));
    assertEquals("43.90", InPrint.residue(Mass.ofMilligrams("43.9"), "0.15874"));
    assertEquals("86.00", InPrint.residue(Mass.ofMilligrams("86"), "0.15874"));
    assertEquals("−0.10", InPrint.residue(Mass.ofMilligrams("-0.1"), "0.12874"));
    assertEquals("0.125", InPrint.residue(Mass.ofMilligrams("0.125"), "0.12874"));
  }
}
