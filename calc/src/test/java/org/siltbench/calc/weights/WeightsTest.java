package org.siltbench.calc.weights;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.siltbench.calc.quantity.Mass;

final class WeightsTest {

  private static Mass mg(String text) {
    return Mass.ofMilligrams(text);
  }

  /** OIML R 111-1:2004 table 1 (check values A4), mg. */
  @ParameterizedTest
  @CsvSource({
    "1,0.006,0.020,0.06,0.20", "2,0.006,0.020,0.06,0.20", "5,0.006,0.020,0.06,0.20",
    "10,0.008,0.025,0.08,0.25", "20,0.010,0.03,0.10,0.3", "50,0.012,0.04,0.12,0.4",
    "100,0.016,0.05,0.16,0.5", "200,0.020,0.06,0.20,0.6", "500,0.025,0.08,0.25,0.8",
    "1000,0.03,0.10,0.3,1.0", "2000,0.04,0.12,0.4,1.2", "5000,0.05,0.16,0.5,1.6",
    "10000,0.06,0.20,0.6,2.0", "20000,0.08,0.25,0.8,2.5", "50000,0.10,0.3,1.0,3.0",
    "100000,0.16,0.5,1.6,5.0", "200000,0.3,1.0,3.0,10"
  })
  void classLimits(String nominal, String e2, String f1, String f2, String m1) {
    Mass n = mg(nominal);
    assertEquals(mg(e2), ClassLimits.of(WeightClass.E2, n));
    assertEquals(mg(f1), ClassLimits.of(WeightClass.F1, n));
    assertEquals(mg(f2), ClassLimits.of(WeightClass.F2, n));
    assertEquals(mg(m1), ClassLimits.of(WeightClass.M1, n));
  }

  @Test
  void seventeenNominalsInOrderAndNothingBetween() {
    assertEquals(17, ClassLimits.nominals().size());
    assertEquals(mg("1"), ClassLimits.nominals().get(0));
    assertEquals(mg("200000"), ClassLimits.nominals().get(16));
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class,
            () -> ClassLimits.of(WeightClass.F1, Mass.ofGrams("150")));
    assertTrue(e.getMessage().startsWith("150 g is not a nominal mass"), e.getMessage());
    assertThrows(IllegalArgumentException.class, () -> ClassLimits.of(WeightClass.F1, Mass.ZERO));
  }

  /** OIML R 111-1 5.2 and 5.3, from memory (check values A4): F1 100 g has a limit of 0.5 mg. */
  @ParameterizedTest
  @CsvSource({
    "100000.3,0.15,true,true", // U ≤ 0.1666…, 0.3 ≤ 0.35
    "100000.35,0.15,true,true", // on the line
    "100000.350001,0.15,true,false",
    "99999.65,0.15,true,true",
    "99999.649999,0.15,true,false",
    "100000.0,0.166666,true,true",
    "100000.0,0.166667,false,true",
    "100000.4,0.2,false,false",
    "100000.0,0.6,false,false"
  })
  void bothAcceptanceRules(String certified, String u, boolean small, boolean within) {
    ClassAcceptance a =
        ClassAcceptance.judge(WeightClass.F1, Mass.ofGrams("100"), mg(certified), mg(u));
    assertEquals(small, a.smallUncertainty());
    assertEquals(within, a.withinReducedLimit());
    assertEquals(small && within, a.accepted());
    assertEquals(mg("0.5"), a.limit());
    assertEquals(mg(certified).minus(Mass.ofGrams("100")), a.error());
  }

  @Test
  void aNegativeUncertaintyIsRefused() {
    Mass hundred = Mass.ofGrams("100");
    assertThrows(
        IllegalArgumentException.class,
        () -> ClassAcceptance.judge(WeightClass.F1, hundred, hundred, mg("-0.1")));
    assertThrows(
        IllegalArgumentException.class,
        () -> BalanceCheck.of(hundred, hundred, mg("-0.1"), mg("0.5")));
    assertThrows(
        IllegalArgumentException.class,
        () -> BalanceCheck.of(hundred, hundred, mg("0.1"), Mass.ZERO));
    assertThrows(
        IllegalArgumentException.class,
        () -> CertificateDrift.between(hundred, mg("-1"), hundred, mg("1"), 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> CertificateDrift.between(hundred, mg("1"), hundred, mg("-1"), 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> CertificateDrift.between(hundred, mg("1"), hundred, mg("1"), 0));
  }

  /** The error counts from the certified value, not from the nominal. */
  @Test
  void balanceIsJudgedByItsOwnLimitAgainstTheCertificate() {
    Mass certified = Mass.ofGrams("0.100012");
    BalanceCheck ok = BalanceCheck.of(Mass.ofGrams("0.1001"), certified, mg("0.02"), mg("0.1"));
    assertEquals(mg("0.088"), ok.error());
    assertTrue(ok.pass());
    assertTrue(ok.weightGoodEnough());
    assertTrue(BalanceCheck.of(mg("100.112"), certified, mg("0.02"), mg("0.1")).pass());
    assertFalse(BalanceCheck.of(mg("100.112001"), certified, mg("0.02"), mg("0.1")).pass());
    assertFalse(BalanceCheck.of(mg("99.911999"), certified, mg("0.02"), mg("0.1")).pass());
    BalanceCheck coarse = BalanceCheck.of(certified, certified, mg("0.05"), mg("0.1"));
    assertFalse(coarse.weightGoodEnough());
    assertTrue(BalanceCheck.of(certified, certified, mg("0.03"), mg("0.09")).weightGoodEnough());
  }

  /** E_n = |x1 − x2|/√(U1² + U2²) (ISO 13528:2015 9.7), by hand: 0.05/√(0.03² + 0.04²) = 1. */
  @Test
  void driftBetweenCertificates() {
    CertificateDrift d =
        CertificateDrift.between(mg("100.00"), mg("0.03"), mg("99.95"), mg("0.04"), 2);
    assertEquals(mg("-0.05"), d.change());
    assertEquals(1, d.normalisedError(), 1e-12);
    assertEquals(-0.025, d.milligramsPerYear(), 1e-15);
    assertEquals(0.05 / Math.sqrt(3), d.uncertainty(), 1e-15);
    assertFalse(
        CertificateDrift.between(mg("100.00"), mg("0.03"), mg("99.951"), mg("0.04"), 2)
            .significant());
    assertTrue(
        CertificateDrift.between(mg("100.00"), mg("0.03"), mg("99.94"), mg("0.04"), 2)
            .significant());
    assertEquals(
        0, CertificateDrift.between(mg("1"), Mass.ZERO, mg("1"), Mass.ZERO, 1).normalisedError());
    assertEquals(
        Double.POSITIVE_INFINITY,
        CertificateDrift.between(mg("1"), Mass.ZERO, mg("2"), Mass.ZERO, 1).normalisedError());
  }

  @Property(tries = 100)
  void anAcceptedWeightIsTrulyWithinItsLimit(
      @ForAll @LongRange(min = -700_000, max = 700_000) long error,
      @ForAll @LongRange(min = 0, max = 300_000) long u) {
    Mass nominal = Mass.ofGrams("100");
    ClassAcceptance a =
        ClassAcceptance.judge(WeightClass.F1, nominal, nominal.plus(new Mass(error)), new Mass(u));
    if (a.accepted()) {
      assertTrue(Math.abs(error) + u <= 500_000);
    }
  }

  @Test
  void anUncertaintyOfZeroIsAllowed() {
    Mass hundred = Mass.ofGrams("100");
    assertTrue(ClassAcceptance.judge(WeightClass.E2, hundred, hundred, Mass.ZERO).accepted());
    assertTrue(BalanceCheck.of(hundred, hundred, Mass.ZERO, mg("0.1")).weightGoodEnough());
    assertFalse(new CertificateDrift(Mass.ZERO, 1, 0, 0).significant());
  }
}
