package org.siltbench.station.elsewhere;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.format.FormatException;
import org.siltbench.balance.format.FormatText;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.MethodException;
import org.siltbench.calc.reason.Reason;
import org.siltbench.calc.reason.ReasonCode;
import org.siltbench.calc.result.InputFaults;
import org.siltbench.calc.result.RowFault;
import org.siltbench.calc.result.RowSays;
import org.siltbench.station.said.Gaps;
import org.siltbench.station.said.Words;

/** What the other rooms say has its German sentence here; found by their codes, not by a list. */
class ElsewhereTest {

  private static final List<ReasonCode> CODES = codes();

  private static List<ReasonCode> codes() {
    List<ReasonCode> out = new ArrayList<>();
    for (JavaClass one :
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_PACKAGE_INFOS)
            .importPackages(
                "org.siltbench.calc", "org.siltbench.balance", "org.siltbench.labels")) {
      if (one.isEnum() && one.isAssignableTo(ReasonCode.class)) {
        for (Object constant : one.reflect().getEnumConstants()) {
          out.add((ReasonCode) constant);
        }
      }
    }
    return out;
  }

  private static ResourceBundle german(ReasonCode code) {
    return ResourceBundle.getBundle(
        Elsewhere.name(code.getDeclaringClass()),
        Locale.GERMAN,
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  private static String key(ReasonCode code) {
    return code.name().toLowerCase(Locale.ROOT).replace('_', '.');
  }

  @Test
  void everyReasonHasItsGermanSentenceWithTheSameFacts() {
    assertTrue(CODES.size() > 150, "only " + CODES.size() + " codes were found");
    for (ReasonCode code : CODES) {
      if (code == Reason.Outside.AS_IT_CAME) {
        continue;
      }
      String german = german(code).getString(key(code));
      assertEquals(Gaps.of(code.english()), Gaps.of(german), () -> code + ": " + german);
      assertEquals(code.english().isEmpty(), german.isEmpty(), () -> code + " is empty in German");
    }
  }

  @Test
  void noSentenceStandsThereWithoutItsCode() {
    Set<String> known = new HashSet<>();
    CODES.forEach(code -> known.add(code.getDeclaringClass() + key(code)));
    for (ReasonCode code : CODES) {
      if (code != Reason.Outside.AS_IT_CAME) {
        german(code)
            .keySet()
            .forEach(k -> assertTrue(known.contains(code.getDeclaringClass() + k), k));
      }
    }
  }

  @Test
  void namesOfEnumsDoNotMeet() {
    Set<Class<?>> homes = new HashSet<>();
    CODES.forEach(code -> homes.add(code.getDeclaringClass()));
    assertEquals(homes.size(), homes.stream().map(Elsewhere::name).distinct().count());
  }

  @Test
  void germanAndEnglishAtTheScreenNameNoCommand() {
    for (ReasonCode code : CODES) {
      for (Locale language : List.of(Locale.GERMAN, Words.SCREEN_ENGLISH)) {
        String said = Elsewhere.words(code.with("x", "y", "z", "u", "v")).in(language);
        assertFalse(said.contains("`") || said.contains(" --"), () -> code + ": " + said);
      }
    }
  }

  @Test
  void aReasonWithinAReasonSpeaksTheSameLanguage() {
    IOException cause = new NoSuchFileException("/dev/ttyX");
    BalanceException e =
        new BalanceException(
            BalanceSays.NOT_REACHED.with("host", 4001, cause), BalanceSays.CHECK_NETWORK.with());

    assertEquals("Cannot reach host:4001 (/dev/ttyX).", Elsewhere.words(e).english());
    assertEquals(
        "host:4001 ist nicht erreichbar (/dev/ttyX gibt es nicht).",
        Elsewhere.words(e).in(Locale.GERMAN));
    assertEquals(
        "Prüfen Sie, ob die Waage eingeschaltet ist und ihr Netzwerkkabel steckt.",
        Elsewhere.words(e.wayOut()).in(Locale.GERMAN));
  }

  @Test
  void faultsOfAMethodsTextAreToldLineByLine() {
    MethodException e =
        assertThrows(MethodException.class, () -> Method.parse("report_digits = ten\nnothing\n"));
    String german = Elsewhere.words(e).in(Locale.GERMAN);

    assertEquals(e.getMessage(), Elsewhere.words(e).english());
    assertEquals(e.getMessage().lines().count(), german.lines().count());
    assertEquals(
        List.of(
            "Zeile 1, report_digits: dort steht „ten“, erwartet: eine ganze Zahl von 1 bis 9",
            "Zeile 2, (kein Schlüssel): dort steht „nothing“, erwartet: Schlüssel = Wert"),
        german.lines().limit(2).toList());
    assertTrue(german.contains("u_mass_dof: fehlt, erwartet: eine Zahl von 1 bis inf ("), german);
    assertFalse(german.contains("expected") || german.contains(": missing"), german);
  }

  @Test
  void aRowThatCannotBeCalculatedIsTold() {
    RowFault volume =
        new RowFault(0, "volume_ml", Reason.plain("9"), RowSays.VOLUME.with("20", "5000"));
    InputFaults e = new InputFaults(List.of(volume, volume), 3);

    assertEquals(e.getMessage(), Elsewhere.words(e).english());
    assertEquals(
        "Spalte volume_ml: dort steht „9“, erwartet: ein Volumen in mL von 20 bis 5000,"
            + " oder nichts, wo es nicht bekannt ist",
        Elsewhere.words(e).in(Locale.GERMAN).lines().findFirst().orElseThrow());
    assertTrue(Elsewhere.words(e).in(Locale.GERMAN).endsWith("… und 1 weitere"));
  }

  @Test
  void aFaultInALineFormatIsTold() {
    FormatException e =
        assertThrows(
            FormatException.class,
            () -> FormatText.parse("siltbench line format 1\nline: numbr\n"));

    assertEquals(e.getMessage(), Elsewhere.words(e).english());
    assertTrue(e.getMessage().startsWith("line 2: unknown part \"numbr\"; the parts are "));
    String german = Elsewhere.words(e).in(Locale.GERMAN);
    assertTrue(german.startsWith("Zeile 2: unbekannter Teil „numbr“; die Teile sind "), german);
  }

  @Test
  void whatOthersSayIsPassedOnAsItCame() {
    assertEquals("x $1 {0}", Elsewhere.words(new IOException("x $1 {0}")).in(Locale.GERMAN));
  }
}
