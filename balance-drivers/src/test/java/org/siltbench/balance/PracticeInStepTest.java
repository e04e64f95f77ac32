package org.siltbench.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.practice.Load;
import org.siltbench.balance.practice.PracticeSetup;
import org.siltbench.balance.practice.PracticeSetup.Via;
import org.siltbench.balance.practice.PracticeSource;
import org.siltbench.calc.quantity.Mass;

class PracticeInStepTest {

  private static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");
  private static final Mass FILTER = Mass.ofMilligrams("112.34");

  @TempDir Path formats;

  private PracticeSource open(Via via) throws IOException {
    Balances balances = new Balances(new VirtualTime(MORNING), formats);
    return balances.practice(PracticeSetup.seeded(7).via(via));
  }

  /** 20 simulated seconds: empty for two, then a filter. */
  private static List<Reading> weigh(PracticeSource source) throws InterruptedException {
    List<Reading> out = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      if (i == 20) {
        source.hand().put(Load.of(FILTER));
      }
      if (source.next(Duration.ofSeconds(1)) instanceof SourceEvent.Read read) {
        out.add(read.reading());
      }
    }
    return out;
  }

  @Test
  void aFilterLaidOnSettlesAtItsMassWithinAFewSteps() throws Exception {
    try (PracticeSource source = open(Via.MEMORY)) {
      List<Reading> readings = weigh(source);
      double last = readings.get(readings.size() - 1).mass().milligrams();
      assertEquals(112.34, last, 0.03);
      assertTrue(readings.get(5).mass().abs().milligrams() < 0.03);
    }
  }

  @Test
  void theSameReadingsCrossARealPseudoTerminalWithTheSameSimulatedTimes() throws Exception {
    List<Reading> inMemory;
    try (PracticeSource source = open(Via.MEMORY)) {
      inMemory = weigh(source);
    }
    try (PracticeSource source = open(Via.PTY)) {
      assertEquals(inMemory, weigh(source));
    }
  }

  @Test
  void twentySimulatedSecondsPassOnTheClockEverybodySees() throws Exception {
    try (PracticeSource source = open(Via.MEMORY)) {
      weigh(source);
      double seconds = Duration.between(MORNING, source.time().instant()).toMillis() / 1000.0;
      assertEquals(20, seconds, 1);
    }
  }

  @Test
  void aWaitShorterThanTheIntervalIsQuietAndMovesTimeByTheWait() throws Exception {
    try (PracticeSource source = open(Via.MEMORY)) {
      SourceEvent event = source.next(Duration.ofMillis(10));
      assertTrue(event instanceof SourceEvent.Quiet);
      assertEquals(MORNING.plusMillis(10), source.time().instant());
    }
  }
}
