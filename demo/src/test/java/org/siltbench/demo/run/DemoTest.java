package org.siltbench.demo.run;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.practice.PracticeSetup;

class DemoTest {

  @TempDir Path folder;

  @Test
  void everyFaultIsFlaggedAndNothingIsLostOverARealPseudoTerminal() throws Exception {
    Campaign.Outcome outcome = run(20261014, PracticeSetup.Via.PTY);
    assertAll(
        outcome.faults().entrySet().stream()
            .map(fault -> () -> assertTrue(fault.getValue(), fault.getKey())));
    assertEquals(0, outcome.lost());
    assertTrue(outcome.comparison().samples() >= 40, outcome.comparison()::toString);
    for (String paper : List.of("bag-labels.pdf", "field-sheet.pdf", "log-sheet.pdf")) {
      assertTrue(Files.size(folder.resolve("20261014").resolve(paper)) > 1000, paper);
    }
  }

  @Tag("long")
  @Test
  void everyFaultIsFlaggedWhateverTheSeed() throws Exception {
    List<String> missed = new ArrayList<>();
    for (long seed = 1; seed <= 10; seed++) {
      Campaign.Outcome outcome = run(seed, PracticeSetup.Via.MEMORY);
      long at = seed;
      outcome
          .faults()
          .forEach(
              (fault, seen) -> {
                if (!seen) {
                  missed.add(at + ": " + fault);
                }
              });
    }
    assertEquals(List.of(), missed);
  }

  @Tag("long")
  @Test
  void theSameSeedGivesTheSameLedgerAndPapersByteForByte() throws Exception {
    List<String> kept = List.of("log-sheet.pdf", "bag-labels.pdf", "results/report.pdf");
    List<byte[]> first = new ArrayList<>();
    run(7, PracticeSetup.Via.PTY);
    for (String file : kept) {
      first.add(Files.readAllBytes(folder.resolve("7").resolve(file)));
    }
    Files.move(folder.resolve("7"), folder.resolve("first"));
    run(7, PracticeSetup.Via.PTY);
    for (int i = 0; i < kept.size(); i++) {
      byte[] again = Files.readAllBytes(folder.resolve("7").resolve(kept.get(i)));
      assertArrayEquals(first.get(i), again, kept.get(i));
    }
  }

  private Campaign.Outcome run(long seed, PracticeSetup.Via via) throws Exception {
    Path out = Files.createDirectories(folder.resolve(Long.toString(seed)));
    return new Campaign(out, seed, via, new Quiet()).run();
  }

  private static final class Quiet implements Story {
    @Override
    public void chapter(String title) {}

    @Override
    public void tell(String line) {}
  }
}
