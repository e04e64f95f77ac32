package org.siltbench.calc;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.time.Clock;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.siltbench.calc.method.Presets;

/** Calc is pure arithmetic: it knows nothing of files, screens, clocks or other rooms. */
final class CalcArchitectureTest {

  private static final JavaClasses CALC =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.siltbench.calc");

  private static final String[] ARITHMETIC = {
    "org.siltbench.calc..",
    "java.lang..",
    "java.util..",
    "java.math..",
    "java.time..",
    "org.apache.commons.statistics..",
    "org.apache.commons.rng..",
    "org.jspecify.."
  };

  @Test
  void calc_needs_the_jdk_and_a_numeric_library_and_nothing_else() {
    assertTrue(CALC.size() > 50, "classes found: " + CALC.size());
    classes()
        .that()
        .doNotBelongToAnyOf(Presets.class)
        .should()
        .onlyDependOnClassesThat(resideInAnyPackage(ARITHMETIC))
        .check(CALC);
  }

  // Presets reads the preset texts that lie beside it in the jar; its texts are UTF-8.
  @Test
  void only_presets_reads_resources_and_nothing_reads_files() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.nio.file..", "java.net..")
        .check(CALC);
  }

  @Test
  void calc_neither_prints_nor_asks_the_time() {
    noClasses()
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(Instant.class, "now")
        .orShould()
        .dependOnClassesThat()
        .areAssignableTo(Clock.class)
        .check(CALC);
  }

  @Test
  void packages_form_no_circle() {
    slices().matching("org.siltbench.calc.(*)..").should().beFreeOfCycles().check(CALC);
  }
}
