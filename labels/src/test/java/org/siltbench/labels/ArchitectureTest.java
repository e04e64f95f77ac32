package org.siltbench.labels;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

class ArchitectureTest {

  /** Every rule of this class, as a test of its own. */
  @TestFactory
  List<DynamicTest> rules() throws IllegalAccessException {
    JavaClasses classes =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.siltbench.labels");
    List<DynamicTest> tests = new ArrayList<>();
    for (Field field : ArchitectureTest.class.getDeclaredFields()) {
      if (field.getType() == ArchRule.class) {
        ArchRule rule = (ArchRule) field.get(null);
        tests.add(DynamicTest.dynamicTest(field.getName(), () -> rule.check(classes)));
      }
    }
    return tests;
  }

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

  static final ArchRule pdfTypesStayWhereThingsAreDrawnAndPrinted =
      noClasses()
          .that()
          .resideOutsideOfPackages("org.siltbench.labels.draw..", "org.siltbench.labels.print..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..");

  static final ArchRule codesAreMadeInOnePlace =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.siltbench.labels.code..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.google.zxing..");

  static final ArchRule chartsHaveNoSurface =
      noClasses()
          .that()
          .resideInAPackage("org.siltbench.labels.chart..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.siltbench.labels.draw..", "java.awt..");

  static final ArchRule nobodyTalksToTheConsole =
      noClasses()
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err");
}
