package org.siltbench.station.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Locale;
import java.util.Queue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.siltbench.labels.PapersSay;
import org.siltbench.labels.print.PrintOutcome;
import org.siltbench.station.bench.LabTroubles;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.work.label.PrintText;

/** What fails outside is told with what is safe and what to do next, in both languages. */
class FailuresOnScreenTest {

  @TempDir Path folder;

  private static Notice only(TestDesk bench, String about) {
    return bench.desk().notices().list().stream()
        .filter(notice -> notice.about().equals(about))
        .findFirst()
        .orElseThrow();
  }

  private static void toldWhole(Notice notice, String what, String safe) {
    assertEquals(Notice.Level.TROUBLE, notice.level());
    assertTrue(notice.what().contains(what), notice.what());
    assertTrue(notice.safe().contains(safe), notice.safe());
    assertFalse(notice.next().isBlank());
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void a_full_disk(String language) {
    boolean german = language.equals("de");
    try (TestDesk bench = new TestDesk(folder, Locale.forLanguageTag(language))) {
      bench
          .desk()
          .record(
              () -> {
                throw LabTroubles.writing(new IOException("No space left on device"));
              },
              never -> {});
      toldWhole(
          only(bench, "work"),
          german ? "Der Datenträger ist voll." : "The disk is full.",
          german ? "Alles, was vorher" : "Everything recorded before is safe.");
    }
  }

  @Test
  void a_clock_that_went_back() {
    try (TestDesk bench = new TestDesk(folder)) {
      bench.clock().advance(Duration.ofMinutes(10));
      bench.desk().tick();
      bench.clock().advance(Duration.ofMinutes(-7));
      bench.desk().tick();
      toldWhole(only(bench, "clock"), "420 s", "safe");
    }
  }

  @Test
  void a_lab_folder_that_does_not_answer_and_answers_again() {
    Queue<Runnable> held = new ArrayDeque<>();
    boolean[] holds = {false};
    try (TestDesk bench =
        new TestDesk(
            folder,
            Words.SCREEN_ENGLISH,
            work -> {
              if (holds[0]) {
                held.add(work);
              } else {
                work.run();
              }
            })) {
      holds[0] = true;
      for (int i = 0; i < 60; i++) {
        bench.desk().tick();
      }
      toldWhole(only(bench, "busy"), "does not answer", "on the disk");
      holds[0] = false;
      held.forEach(Runnable::run);
      assertTrue(bench.desk().notices().list().stream().noneMatch(n -> n.about().equals("busy")));
    }
  }

  @Test
  void a_printer_without_paper_is_named_in_the_language_of_the_window() {
    Words said =
        PrintText.of(
            new PrintOutcome.Waits(
                "roll", PrintOutcome.Why.OUT_OF_PAPER, PapersSay.NEXT_OUT_OF_PAPER.with()));
    assertEquals("Printer roll: out of paper. Put labels in, then print again.", said.english());
    assertEquals(
        "Drucker roll: das Papier ist aus. Legen Sie Etiketten ein, dann drucken Sie noch einmal.",
        said.in(Locale.GERMAN));
  }
}
