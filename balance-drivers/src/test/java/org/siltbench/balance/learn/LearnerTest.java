package org.siltbench.balance.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.siltbench.balance.format.FormatText;
import org.siltbench.balance.format.MassUnit;

class LearnerTest {

  private static Learned learn(Hints hints, String... lines) {
    String text = String.join("\r\n", lines) + "\r\n";
    return Learner.learn(List.of(new Sample(Situation.UNKNOWN, text, true)), hints);
  }

  @Test
  void threeLinesGiveTheSafestFormatAndSayWhatStaysUnknown() {
    Learned learned = learn(Hints.NONE, "ok,  0.1234 g", "ok,  0.1235 g", "ok,  0.1234 g");
    assertNotNull(learned.format());
    String unknown = String.join("; ", learned.unknown());
    assertTrue(unknown.contains("minus sign"), unknown);
    assertTrue(unknown.contains("'ok' is in every line"), unknown);
    assertTrue(unknown.contains("talks by itself"), unknown);
    assertEquals("0.1234", learned.lines().get(0).reading().digits());
  }

  @Test
  void whatIsLearnedSurvivesItsFile() {
    Learned learned = learn(Hints.NONE, "R,+  0.1234 g", "R,-  0.1235 g", "R,+ 12.1234 g");
    assertEquals(learned.format(), FormatText.parse(FormatText.print(learned.format())));
  }

  /** Lines that tempt to a wrong mass: none may be read. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,234 g / 2,345 g / 3,456 g | decimal mark",
        "1 234.56 g / 2 345.67 g / 1 234.57 g | may belong to it",
        "0.123 4 g / 0.123 5 g / 0.123 6 g | number",
        "0.123[4] g / 0.123[5] g / 0.123[6] g | number",
        "1.234E-01 g / 1.235E-01 g / 1.233E-01 g | number",
        "gross 12.34 g tare 10.00 g / gross 12.35 g tare 10.00 g / gross 1.00 g tare 1.00 g | number",
        "A-0.1234 g / A-0.1235 g / A-0.1234 g | sign",
        "0.1234- g / 0.1235- g / 0.1233- g | sign",
        "0.1234 / 0.1235 / 0.1236 | unit",
        "2026.03.02 / 2026.03.02 / 2026.03.02 | number",
      })
  void linesThatCouldMeanTwoThingsAreNotRead(String lines, String doubt) {
    Learned learned = learn(Hints.NONE, lines.split(" / "));
    assertNull(learned.format(), () -> FormatText.print(learned.format()));
    assertTrue(learned.unknown().get(0).contains(doubt), learned.unknown().toString());
  }

  @Test
  void aBlockOfSeveralMassesInTurnIsNotReadAsOne() {
    Learned learned =
        learn(
            Hints.NONE,
            "G 12.34 g",
            "T 10.00 g",
            "N  2.34 g",
            "G 12.35 g",
            "T 10.00 g",
            "N  2.35 g",
            "G 12.35 g",
            "T 10.00 g",
            "N  2.35 g");
    assertNull(learned.format());
    assertTrue(learned.unknown().toString().contains("several come in turn"));
  }

  @Test
  void aUnitTheLinesDoNotNameCanBeSaid() {
    Hints grams = new Hints(MassUnit.GRAM, null, false);
    Learned learned = learn(grams, "+  0.1234", "-  0.0001", "+  0.1235");
    assertEquals(123_400_000, learned.lines().get(0).reading().mass().nanograms());
    assertEquals(-100_000, learned.lines().get(1).reading().mass().nanograms());
  }

  @Test
  void nothingAtAllIsSaidToBeNothing() {
    Learned learned = Learner.learn(List.of(), Hints.NONE);
    assertNull(learned.format());
    assertTrue(learned.unknown().get(0).contains("line end"));
  }
}
