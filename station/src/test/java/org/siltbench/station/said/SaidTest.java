package org.siltbench.station.said;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Everything that the bench can say, in every language; found by its codes, not by a list. */
class SaidTest {

  private static final List<String> PARTS = List.of("", ".what", ".safe", ".next");

  private static final List<Code> CODES = codes();

  private static List<Code> codes() {
    List<Code> out = new ArrayList<>();
    for (JavaClass one :
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.siltbench.station")) {
      if (one.isEnum() && one.isAssignableTo(Code.class)) {
        for (Object constant : one.reflect().getEnumConstants()) {
          out.add((Code) constant);
        }
      }
    }
    return out;
  }

  private static ResourceBundle bundle(Code code, Locale language) {
    return ResourceBundle.getBundle(
        code.getDeclaringClass().getPackageName() + ".says",
        language,
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  /** Only what stands in the file of this language itself, not in the one behind it. */
  private static Set<String> keys(Code code, Locale language) {
    ResourceBundle own = bundle(code, language);
    return own.keySet().stream()
        .filter(key -> own.getLocale().equals(language) || language.equals(Locale.ROOT))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void everyCodeHasItsSentenceInEnglishAndTheSamePartsInGerman() {
    assertTrue(CODES.size() > 250, "only " + CODES.size() + " codes were found");
    for (Code code : CODES) {
      ResourceBundle english = bundle(code, Locale.ROOT);
      ResourceBundle german = bundle(code, Locale.GERMAN);
      assertEquals(Locale.GERMAN, german.getLocale(), () -> code + " has no German bundle");
      assertTrue(
          english.containsKey(code.key()) || english.containsKey(code.key() + ".what"),
          () -> code.getDeclaringClass() + " " + code + " says nothing");
      for (String part : PARTS) {
        String key = code.key() + part;
        if (english.containsKey(key)) {
          assertFalse(german.getString(key).isBlank(), () -> key + " is empty in German");
        }
      }
    }
  }

  @Test
  void noSentenceStandsInABundleWithoutItsCode() {
    Set<String> named =
        CODES.stream()
            .flatMap(
                code ->
                    PARTS.stream()
                        .map(part -> code.getDeclaringClass().getPackageName() + code.key() + part))
            .collect(Collectors.toSet());
    for (Code code : CODES) {
      for (Locale language : List.of(Locale.ROOT, Locale.GERMAN, Words.SCREEN_ENGLISH)) {
        for (String key : keys(code, language)) {
          assertTrue(
              named.contains(code.getDeclaringClass().getPackageName() + key),
              () -> code.getDeclaringClass() + ": " + key + " belongs to no code");
        }
      }
    }
  }

  @Test
  void germanTellsTheSameFactsAndNamesNoOptionOfACommand() {
    for (Code code : CODES) {
      String english = all(code, Locale.ROOT);
      String german = all(code, Locale.GERMAN);
      boolean whole = english.equals("{0}"); // the words of another room, told anew in German
      assertTrue(
          whole || Gaps.of(english).containsAll(Gaps.of(german)), () -> code + ": " + german);
      assertFalse(german.contains(" --") && !german.contains("siltbench "), () -> german);
    }
  }

  @Test
  void englishAtTheScreenTellsTheSameFactsAndNamesNoOptionOfACommand() {
    for (Code code : CODES) {
      String atTheScreen = all(code, Words.SCREEN_ENGLISH);
      assertTrue(
          Gaps.of(all(code, Locale.ROOT)).containsAll(Gaps.of(atTheScreen)), () -> atTheScreen);
      assertFalse(
          atTheScreen.contains("--") && !atTheScreen.contains("siltbench "), () -> atTheScreen);
    }
  }

  private static String all(Code code, Locale language) {
    ResourceBundle words = bundle(code, language);
    return PARTS.stream()
        .map(part -> code.key() + part)
        .filter(words::containsKey)
        .map(words::getString)
        .collect(Collectors.joining(" "));
  }

  @Test
  void gapsTakeDigitsAsTheyAreAndWordsInTheSameLanguage() {
    Words twice = language -> language.equals(Locale.GERMAN) ? "zweimal {0} $1" : "twice {0} $1";
    Said said = Said.of(Sample.COUNTED, 12000, twice);

    assertEquals("12000 masses, twice {0} $1", said.in(Locale.ENGLISH));
    assertEquals("12000 Massen, zweimal {0} $1", said.in(Locale.GERMAN));
    assertEquals("12000 masses, twice {0} $1", said.in(Locale.FRENCH));
  }

  private enum Sample implements Code {
    COUNTED
  }
}
