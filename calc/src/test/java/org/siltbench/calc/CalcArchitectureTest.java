package org.siltbench.calc;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import org.siltbench.calc.method.Presets;

/** Calc is pure arithmetic: it knows nothing of files, screens, clocks or other rooms. */
@AnalyzeClasses(
    packages = "org.siltbench.calc",
    importOptions = ImportOption.DoNotIncludeTests.class)
final class CalcArchitectureTest {

  private static final String[] ARITHMETIC = {
    "org.siltbench.calc..",
    "java.lang..",
    "java.util..",
    "java.math..",
    "org.apache.commons.statistics..",
    "org.apache.commons.rng..",
    "org.jspecify.."
  };

  @ArchTest
  static final ArchRule calc_needs_the_jdk_and_a_numeric_library_and_nothing_else =
      classes()
          .that()
          .doNotBelongToAnyOf(Presets.class)
          .should()
          .onlyDependOnClassesThat(resideInAnyPackage(ARITHMETIC));

  // Presets reads the preset texts that lie beside it in the jar; its texts are UTF-8.
  @ArchTest
  static final ArchRule only_presets_reads_resources_and_never_files =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.nio.file..", "java.net..");

  @ArchTest
  static final ArchRule calc_neither_prints_nor_asks_the_time =
      noClasses()
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime");

  @ArchTest
  static final ArchRule packages_form_no_circle =
      slices().matching("org.siltbench.calc.(*)..").should().beFreeOfCycles();
}
