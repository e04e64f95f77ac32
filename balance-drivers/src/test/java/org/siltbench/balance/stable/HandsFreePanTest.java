package org.siltbench.balance.stable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.siltbench.balance.Reading;
import org.siltbench.calc.quantity.Mass;

class HandsFreePanTest {

  private static final PanSettings FILTERS =
      PanSettings.usual().withWindow(Mass.ofMilligrams("60"), Mass.ofMilligrams("160"));

  private final Pan pan = new Pan(FILTERS, 1);

  @Test
  void aFilterIsAcceptedOnceBetweenTwoSightsOfTheEmptyPan() {
    pan.show(3, 0).put(40, 0, 112.34).put(6, 112.34, 0).put(40, 0, 98.76).put(6, 98.76, 0);
    var accepted = pan.all(PanEvent.Accepted.class);
    assertEquals(2, accepted.size(), pan::said);
    assertEquals(112.34, accepted.get(0).stable().mass().milligrams(), 0.011);
    assertEquals(98.76, accepted.get(1).stable().mass().milligrams(), 0.011);
    assertEquals(2, pan.count(PanEvent.Unloaded.class));
    assertEquals(3, pan.count(PanEvent.Ready.class));
  }

  @Test
  void theTailOfTheLoadBeforeIsNotTakenForTheZero() {
    for (int i = 0; i < 20; i++) {
      Pan quick = new Pan(FILTERS, 100 + i);
      quick.show(3, 0).put(40, 0, 112.34).put(6, 112.34, 0).put(40, 0, 98.76);
      var accepted = quick.all(PanEvent.Accepted.class);
      assertEquals(2, accepted.size(), quick::said);
      assertEquals(98.76, accepted.get(1).net().milligrams(), 0.021);
    }
  }

  @Test
  void theRiseOfALoadLaidDownSlowlyIsNotTakenForTheEmptyPan() {
    for (double slow : new double[] {0.4, 0.8, 1.2}) {
      Pan slowly = new Pan(FILTERS, 7);
      slowly.show(4, 0).play(40, t -> 112.34 * (1 - Math.exp(-Math.pow(t / slow, 3))));
      var accepted = slowly.all(PanEvent.Accepted.class);
      assertEquals(1, accepted.size(), slowly::said);
      assertEquals(0, accepted.get(0).zeroCorrection().milligrams(), 0.011);
    }
  }

  @Test
  void aProvisionalValueComesBeforeTheRecordedOne() {
    pan.show(3, 0).put(40, 0, 112.34);
    int provisional = indexOf(PanEvent.Provisional.class);
    int accepted = indexOf(PanEvent.Accepted.class);
    assertTrue(provisional >= 0 && provisional < accepted, pan::said);
  }

  @Test
  void theRecordedMassIsADisplayedValueWithItsDigits() {
    pan.show(3, 0).put(40, 0, 112.344);
    var stable = pan.all(PanEvent.Accepted.class).get(0).stable();
    assertTrue(stable.evidence().stream().anyMatch(r -> r.digits().equals(stable.digits())));
    assertEquals(Mass.ofGrams(stable.digits()), stable.mass());
    assertEquals(new Mass(10_000), stable.resolution());
    assertEquals("g", stable.unit());
  }

  @Test
  void twoFiltersAtOnceMakeNoMass() {
    pan.show(3, 0).put(40, 0, 224.68);
    assertEquals(0, pan.count(PanEvent.Accepted.class));
    var refused = pan.all(PanEvent.Refused.class);
    assertEquals(1, refused.size());
    assertEquals(PanEvent.Reason.OUTSIDE_WINDOW, refused.get(0).reason());
    assertTrue(refused.get(0).why().contains("Two filters"), refused.get(0).why());
  }

  @Test
  void aSecondFilterLaidOnTopAfterTheRecordIsNotWeighed() {
    pan.show(3, 0).put(40, 0, 70.00).put(40, 70.00, 140.00);
    assertEquals(1, pan.count(PanEvent.Accepted.class));
    assertEquals(70.00, pan.all(PanEvent.Accepted.class).get(0).net().milligrams(), 0.02);
  }

  @Test
  void aTouchOfTheTweezersMakesNoMass() {
    pan.show(3, 0).show(0.8, 400).show(0.5, -200).put(5, -200, 0);
    assertEquals(0, pan.count(PanEvent.Accepted.class));
    assertEquals(0, pan.count(PanEvent.Refused.class));
    pan.put(40, 0, 112.34);
    assertEquals(1, pan.count(PanEvent.Accepted.class));
  }

  @Test
  void tweezersRestingOnThePanAreRefused() {
    pan.show(3, 0).put(40, 0, 5_000);
    assertEquals(0, pan.count(PanEvent.Accepted.class));
    assertEquals(1, pan.count(PanEvent.Refused.class));
  }

  @Test
  void aLoadThatLiesThereAtTheStartIsNotTakenForAnEmptyPan() {
    pan.put(40, 0, 112.34);
    assertEquals(0, pan.count(PanEvent.Accepted.class));
    assertEquals(1, pan.count(PanEvent.Rezero.class));
    assertEquals(0, pan.count(PanEvent.Ready.class));
  }

  @Test
  void aSmallZeroIsLoggedAndCorrected() {
    pan.show(5, 0.2).put(40, 0.2, 112.54);
    var accepted = pan.all(PanEvent.Accepted.class).get(0);
    assertEquals(0.2, accepted.zeroCorrection().milligrams(), 0.011);
    assertEquals(112.34, accepted.net().milligrams(), 0.021);
    assertEquals(112.54, accepted.stable().mass().milligrams(), 0.011);
  }

  @Test
  void aZeroThatDriftsTooFarAsksForRezeroAndWeighsNothingUntilThen() {
    pan.show(5, 0).play(60, t -> 0.02 * t).show(10, 1.2);
    assertEquals(1, pan.count(PanEvent.Rezero.class), pan::said);
    pan.show(5, 0).put(40, 0, 112.34);
    assertEquals(1, pan.count(PanEvent.Accepted.class));
  }

  @Test
  void aLostLinkWithdrawsTheProvisionalValueAndSettlesAnew() {
    pan.show(3, 0).put(4, 0, 112.34).linkLost().pause(2).show(60, 112.34);
    assertTrue(pan.all(PanEvent.Withdrawn.class).get(0).why().contains("link"), pan::said);
    var accepted = pan.all(PanEvent.Accepted.class);
    assertEquals(1, accepted.size());
    assertTrue(accepted.get(0).stable().evidence().get(0).nanos() > 109e9);
  }

  @Test
  void aLinkLostAfterTheRecordDoesNotRecordTheSameFilterAgain() {
    pan.show(3, 0).put(40, 0, 112.34).linkLost().pause(5).show(40, 112.34);
    assertEquals(1, pan.count(PanEvent.Accepted.class));
  }

  @Test
  void overRangeIsToldOnceAndTheLoadSettlesAnew() {
    pan.show(3, 0).put(2, 0, 112.34);
    for (int i = 0; i < 5; i++) {
      pan.kind(Reading.Kind.OVER);
    }
    pan.show(40, 112.34);
    assertEquals(1, pan.count(PanEvent.OutOfRange.class));
    assertEquals(1, pan.count(PanEvent.Accepted.class));
  }

  @Test
  void aFilterThatGainsMassSteadilyIsRefusedForMoisture() {
    pan.show(3, 0).play(60, t -> 112.34 * (1 - Math.exp(-t / 0.4)) + 0.6 / 60 * (t + 10));
    assertEquals(0, pan.count(PanEvent.Accepted.class), pan::said);
    assertEquals(PanEvent.Reason.MOISTURE, pan.all(PanEvent.Refused.class).get(0).reason());
    assertFalse(pan.all(PanEvent.TakingUpMoisture.class).isEmpty());
  }

  @Test
  void whatNeverRestsTimesOut() {
    pan.show(3, 0).play(140, t -> 112 + 30 * Math.sin(t));
    assertEquals(0, pan.count(PanEvent.Accepted.class));
    assertEquals(1, pan.count(PanEvent.Refused.class));
  }

  @Test
  void aDishThatStaysIsTheLevelUnderTheFilter() {
    Pan dished = new Pan(FILTERS.withDish(PanSettings.Dish.STAYS), 2);
    dished.show(4, 5_432.10).put(40, 5_432.10, 5_544.44).put(6, 5_544.44, 5_432.12);
    var accepted = dished.all(PanEvent.Accepted.class);
    assertEquals(1, accepted.size(), dished::said);
    assertEquals(112.34, accepted.get(0).net().milligrams(), 0.03);
    assertEquals(2, dished.count(PanEvent.Ready.class));
  }

  @Test
  void aDishOfItsOwnIsWeighedFirst() {
    Pan dished = new Pan(FILTERS.withDish(PanSettings.Dish.EACH), 3);
    dished.show(3, 0).put(40, 0, 1_500.00).put(40, 1_500.00, 1_612.34).put(3, 1_612.34, 0);
    assertEquals(1, dished.count(PanEvent.DishWeighed.class), dished::said);
    var accepted = dished.all(PanEvent.Accepted.class);
    assertEquals(1, accepted.size());
    assertEquals(112.34, accepted.get(0).net().milligrams(), 0.03);
  }

  @Test
  void aDishTakenOffAgainMakesNoMass() {
    Pan dished = new Pan(FILTERS.withDish(PanSettings.Dish.EACH), 4);
    dished.show(3, 0).put(40, 0, 1_500.00).put(10, 1_500.00, 0);
    assertEquals(0, dished.count(PanEvent.Accepted.class));
    assertEquals(1, dished.count(PanEvent.Unloaded.class));
  }

  private int indexOf(Class<? extends PanEvent> kind) {
    for (int i = 0; i < pan.events.size(); i++) {
      if (kind.isInstance(pan.events.get(i))) {
        return i;
      }
    }
    return -1;
  }
}
