package org.siltbench.balance.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.Balances;
import org.siltbench.balance.ReadingSource;
import org.siltbench.balance.SourceEvent;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.link.LinkSpec;

/** The practice balance as a process of its own, read over a real pseudo-terminal and socket. */
@Timeout(120)
class PracticeServerIT {

  private static final Duration SECOND = Duration.ofSeconds(1);

  @TempDir Path folder;

  private ReadingSource open(String link) throws Exception {
    return new Balances(Timebase.system(), folder).open(LinkSpec.parse(link));
  }

  /** The port comes back a moment after its last reader has gone. */
  private ReadingSource openAgain(String link) throws Exception {
    long patience = System.nanoTime() + Duration.ofSeconds(10).toNanos();
    while (true) {
      try {
        return open(link);
      } catch (BalanceException e) {
        if (System.nanoTime() > patience) {
          throw e;
        }
        Thread.onSpinWait();
      }
    }
  }

  private static void awaitMass(ReadingSource source, double mg) throws Exception {
    while (true) {
      if (source.next(SECOND) instanceof SourceEvent.Read read
          && Math.abs(read.reading().mass().milligrams() - mg) < 0.05) {
        return;
      }
    }
  }

  private void weighsByWords(String... where) throws Exception {
    try (ServerProcess server = new ServerProcess(where)) {
      try (ReadingSource source = open(server.link())) {
        awaitMass(source, 0);
        assertEquals("ok", server.say("put 0.11234"));
        awaitMass(source, 112.34);
      }
      assertEquals("ok", server.say("off"));
      PracticeTruth truth = new PracticeTruth(5);
      assertEquals("ok", server.say("filter K7-0012 post-weighed"));
      try (ReadingSource again = openAgain(server.link())) {
        awaitMass(again, truth.of("K7-0012", "post-weighed").milligrams());
      }
      assertTrue(server.say("sing").startsWith("refused: unknown \"sing\""));
    }
  }

  @Test
  void itWeighsOverAPseudoTerminalAndServesOneReaderAfterAnother() throws Exception {
    String pty = folder.resolve("balance").toString();
    weighsByWords("--pty", pty, "--seed", "5", "--speed", "5");
  }

  @Test
  void itWeighsOverASocketAndServesOneReaderAfterAnother() throws Exception {
    weighsByWords("--tcp", "0", "--seed", "5", "--speed", "5");
  }

  @Test
  void aBalanceThatMustBeAskedAnswersAtTheRateItIsAsked() throws Exception {
    try (ServerProcess server =
            new ServerProcess("--tcp", "0", "--talks", "when-asked", "--speed", "5");
        ReadingSource source = open(server.link() + "?ask=P%0D%0A&every=100ms")) {
      awaitMass(source, 0);
      awaitMass(source, 0);
    }
  }

  @Test
  void nothingIsSentWithoutBeingToldSoABalanceThatMustBeAskedStaysQuiet() throws Exception {
    try (ServerProcess server =
            new ServerProcess("--tcp", "0", "--talks", "when-asked", "--speed", "5");
        ReadingSource source = open(server.link())) {
      assertTrue(source.next(SECOND) instanceof SourceEvent.Quiet);
    }
  }

  @Test
  void aBalanceThatSendsOnItsKeySendsOneLineForEachPress() throws Exception {
    try (ServerProcess server =
            new ServerProcess("--tcp", "0", "--talks", "on-key", "--speed", "5");
        ReadingSource source = open(server.link())) {
      source.next(Duration.ofMillis(200));
      assertEquals("ok", server.say("print"));
      assertTrue(source.next(SECOND) instanceof SourceEvent.Quiet, "the first may be half a line");
      assertEquals("ok", server.say("print"));
      awaitMass(source, 0);
    }
  }
}
