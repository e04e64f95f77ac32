package org.siltbench.balance;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** The arrows inside this room, and what stays pure in it. */
class ArchitectureTest {

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.siltbench.balance");

  private static void holds(ArchRule rule) {
    rule.check(CLASSES);
  }

  @Test
  void driversKnowNoOtherRoomThanArithmetic() {
    holds(
        noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                "org.siltbench.station..", "org.siltbench.labels..", "org.siltbench.demo.."));
  }

  @Test
  void theSerialLibraryIsSeenByTheLinksAndTheFinderOnly() {
    holds(
        noClasses()
            .that()
            .resideOutsideOfPackages("..balance.link..", "..balance.find..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.fazecast.."));
  }

  @Test
  void theDetectorAndThePanCycleArePure() {
    holds(
        noClasses()
            .that()
            .resideInAPackage("..balance.stable..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                "java.io..",
                "java.nio..",
                "java.net..",
                "java.util.concurrent..",
                "..balance.link..",
                "..balance.format..",
                "..balance.practice..")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Thread.class));
  }

  @Test
  void lineFormatsKnowNoLinkAndNoClock() {
    holds(
        noClasses()
            .that()
            .resideInAPackage("..balance.format..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                "java.net..",
                "java.util.concurrent..",
                "..balance.link..",
                "..balance.stable..",
                "..balance.learn..",
                "..balance.practice..",
                "..balance.find.."));
  }

  @Test
  void onlyTheShelfOfFormatsReadsFiles() {
    holds(
        noClasses()
            .that()
            .resideInAPackage("..balance.format..")
            .and()
            .haveSimpleNameNotStartingWith("FormatShelf")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.nio.file.."));
  }

  @Test
  void theLearnerListensToLinksButKnowsNoPractice() {
    holds(
        noClasses()
            .that()
            .resideInAPackage("..balance.learn..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("..balance.stable..", "..balance.practice..", "..balance.find.."));
  }

  @Test
  void onlyTheSystemsClockAsksForTheTime() {
    holds(
        noClasses()
            .that()
            .doNotHaveFullyQualifiedName("org.siltbench.balance.Timebase$1")
            .and()
            .haveNameNotMatching(".*Timebase.*|.*practice.*")
            .should()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(Clock.class, "systemUTC"));
  }
}
