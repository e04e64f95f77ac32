package org.siltbench.balance.stable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class MaskBankTest {

  private static final double[] NO_DRIFT = new double[Kind.ALL.size()];
  private static final Frame FRAME = new Frame(10, 0.01, Double.NaN);

  private final Blocks blocks = new Blocks();
  private final Idle idle = new Idle();
  private final Judge judge = new Judge(idle);

  private void play(double seconds, double noise, DoubleUnaryOperator carrier) {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 10 * seconds; i++) {
      double t = i / 10.0;
      blocks.add(t, Math.rint(carrier.applyAsDouble(t) + noise * random.nextGaussian()));
    }
  }

  @Test
  void restShowsNothingBehindAMask() {
    play(30, 0.8, t -> 0);
    Opinion rest = judge.judge(blocks, 0, Settling.NONE, FRAME);
    assertTrue(judge.masked(blocks, 0, Settling.NONE) < 1e-5);
    assertEquals(0, rest.recorded());
  }

  @Test
  void aJumpAgainstADriftIsNotTakenForRest() {
    play(40, 2.2, t -> -(t < 20 ? 14 : 23) * Math.exp(-t / 70));
    judge.judge(blocks, 0, Settling.NONE, FRAME);
    assertTrue(judge.masked(blocks, 0, Settling.NONE) > 0.01);
  }

  /** A settling of 5 s beside a warm filter: their sum comes to rest before the mass is right. */
  @Test
  void aSlowSettlingAgainstADriftIsNotTakenForRest() {
    play(14, 0.3, t -> 40 * Math.exp(-t / 5) - 25 * Math.exp(-t / 60));
    judge.judge(blocks, 0, Settling.NONE, FRAME);
    assertTrue(judge.masked(blocks, 0, Settling.NONE) > 1e-3);
  }

  /** Where a settling slower than usual is seen, what lies in it says nothing of a drift. */
  @Test
  void aSettlingThatIsSeenHasDiedDownWhereATenthOfADivisionIsLeft() {
    play(40, 0.3, t -> 40 * Math.exp(-t / 5));
    judge.judge(blocks, 0, Settling.NONE, FRAME);
    assertEquals(5 * Math.log(40 / 0.1), blocks.time(judge.settled()), 1.2);
  }

  @Test
  void restAndASlowDriftHaveNothingToDieDown() {
    play(30, 0.3, t -> 0);
    judge.judge(blocks, 0, Settling.NONE, FRAME);
    assertEquals(0, judge.settled());
    blocks.clear();
    play(30, 0.3, t -> -40 * Math.exp(-t / 60));
    judge.judge(blocks, 0, Settling.NONE, FRAME);
    assertEquals(0, judge.settled());
  }

  @Test
  void everyOtherBlockOfAShortWatchMayBeAJumpAndFewerOfALongOne() {
    play(20.55, 0.5, t -> 0);
    MaskBank bank = ran();
    int blocksSeen = blocks.size();
    assertEquals(41, blocksSeen);
    assertEquals(3 + (blocksSeen - 4) / 2 + 1 + 6, bank.masks());
    assertEquals(1.0, bank.spacing(), 0.02);
  }

  @Test
  void aLongWatchHasFortyPlacesAtMostBesideTheSixSteepest() {
    play(110, 0.5, t -> 0);
    MaskBank bank = ran();
    assertTrue(bank.masks() > 3 + 30 && bank.masks() <= 3 + 46, () -> "masks " + bank.masks());
    assertTrue(bank.spacing() > 2.5, () -> "spacing " + bank.spacing());
  }

  /** Fewer places than blocks: the one where the display steps must not be missed by a block. */
  @Test
  void aJumpInALongWatchIsMetToTheBlock() {
    for (double jump = 41; jump < 43; jump += 0.5) {
      double at = jump;
      blocks.clear();
      play(70, 0.4, t -> -(t < at ? 10 : 14) * Math.exp(-t / 140));
      judge.judge(blocks, 0, Settling.NONE, new Frame(1, 0.1, Double.NaN));
      assertTrue(judge.masked(blocks, 0, Settling.NONE) > 0.01, () -> "jump at " + at);
    }
  }

  @Test
  void masksAreSettlingsFromTheBeginningAndJumpsThatDieWithTheirCharge() {
    play(20.55, 0.5, t -> 0);
    MaskBank bank = ran();
    double lasted = blocks.time(blocks.size() - 1) - blocks.time(0);
    assertFalse(bank.jumps(2));
    assertTrue(bank.jumps(3));
    assertEquals(Math.exp(-lasted / 2.5), bank.maskNow(0, 4), 1e-12);
    assertEquals(Math.exp(-lasted / 10), bank.maskNow(2, 0), 1e-12);
    double tau = MaskBank.SLOW.get(4).tau();
    assertEquals(Math.exp(-lasted / tau), bank.shapeNow(4), 1e-12);
    double jumped = (blocks.time(1) + blocks.time(2)) / 2;
    double since = blocks.time(blocks.size() - 1) - jumped;
    assertEquals(Math.exp(-since / tau), bank.maskNow(3, 4), 1e-12);
  }

  @Test
  void theSlowExponentialsCoverEighteenToThreeHundredAndTwentySeconds() {
    double width = MaskBank.SLOW.get(0).width();
    int last = MaskBank.SLOW.size() - 1;
    assertEquals(18, MaskBank.SLOW.get(0).tau() * Math.exp(-width / 2), 1e-9);
    assertEquals(320, MaskBank.SLOW.get(last).tau() * Math.exp(width / 2), 1e-6);
  }

  /** Under white noise the sums are plain sums of products. */
  @Test
  void theFiltersKeepTheProductsOfAShapeWithItsMasks() {
    play(20.55, 0.5, t -> 0);
    MaskBank bank = ran();
    KindFilter white = bank.filter(0);
    double tau = MaskBank.SLOW.get(7).tau();
    double jumped = (blocks.time(3) + blocks.time(4)) / 2;
    double both = 0;
    double squares = 0;
    for (int i = 0; i < blocks.size(); i++) {
      double shape = Math.exp((blocks.time(0) - blocks.time(i)) / tau);
      boolean after = blocks.time(i) > jumped;
      double mask = after ? Math.exp((jumped - blocks.time(i)) / tau) : 0;
      both += shape * mask;
      squares += mask * mask;
    }
    assertEquals(both, white.paired[bank.maskColumn(4, 7)], 0.02 * both);
    assertEquals(squares, white.squares[bank.maskColumn(4, 7)], 0.02 * squares);
    assertTrue(white.squares[bank.shapeColumn(7)] > squares);
  }

  private MaskBank ran() {
    Fits fits = new Fits(Shape.ALL);
    fits.fit(blocks, 0, Settling.NONE, NO_DRIFT, idle);
    MaskBank bank = new MaskBank();
    bank.run(blocks, 0, 1, fits, List.of(0, 3));
    return bank;
  }
}
