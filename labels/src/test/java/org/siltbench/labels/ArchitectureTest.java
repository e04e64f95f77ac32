package org.siltbench.labels;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(
    packages = "org.siltbench.labels",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule paperKnowsOnlyCalculation =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.siltbench.station..",
              "org.siltbench.balance..",
              "org.siltbench.demo..",
              "javafx..",
              "java.sql..");

  @ArchTest
  static final ArchRule pdfTypesStayWhereThingsAreDrawnAndPrinted =
      noClasses()
          .that()
          .resideOutsideOfPackages("org.siltbench.labels.draw..", "org.siltbench.labels.print..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..");

  @ArchTest
  static final ArchRule codesAreMadeInOnePlace =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.siltbench.labels.code..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.google.zxing..");

  @ArchTest
  static final ArchRule chartsHaveNoSurface =
      noClasses()
          .that()
          .resideInAPackage("org.siltbench.labels.chart..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.siltbench.labels.draw..", "java.awt..");

  @ArchTest
  static final ArchRule nobodyTalksToTheConsole =
      noClasses()
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err");
}
