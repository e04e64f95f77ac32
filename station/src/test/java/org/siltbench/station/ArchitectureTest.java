package org.siltbench.station;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.properties.HasName;
import com.tngtech.archunit.core.domain.properties.HasOwner;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.lang.reflect.Field;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The arrows between the rooms, and what stays in its room. */
class ArchitectureTest {

  /** Every rule of this class, as a test of its own. */
  @TestFactory
  List<DynamicTest> rules() throws IllegalAccessException {
    JavaClasses classes =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.siltbench");
    List<DynamicTest> tests = new ArrayList<>();
    for (Field field : ArchitectureTest.class.getDeclaredFields()) {
      if (field.getType() == ArchRule.class) {
        ArchRule rule = (ArchRule) field.get(null);
        tests.add(DynamicTest.dynamicTest(field.getName(), () -> rule.check(classes)));
      }
    }
    return tests;
  }

  static final ArchRule sql_stays_in_register_and_share =
      noClasses()
          .that(
              resideInAPackage("org.siltbench..")
                  .and(
                      not(
                          resideInAnyPackage(
                              "..station.ledger..", "..station.register..", "..station.share.."))))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.sql..", "javax.sql..", "org.h2..", "org.postgresql..");

  static final ArchRule javafx_stays_in_the_window =
      noClasses()
          .that()
          .resideOutsideOfPackage("..station.window..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javafx..");

  static final ArchRule standard_output_belongs_to_the_commands =
      noClasses()
          .that(
              resideInAPackage("org.siltbench.station..")
                  .and(not(resideInAnyPackage("..station.command.."))))
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err");

  /** What the window can meet has a code; these models give sentences of their own bundle. */
  static final ArchRule what_the_window_can_meet_is_said_by_codes =
      noClasses()
          .that(
              resideInAPackage("org.siltbench.station..")
                  .and(
                      not(
                          resideInAnyPackage(
                              "..station.command..", "..station.share..", "..station.backup..")))
                  .and(not(belongToAnyOf(Problem.class)))
                  .and(
                      not(
                          nameMatching(
                              ".*\\.(AmendModel|ProveModel|AuditModel|PapersModel|TripModel"
                                  + "|ImportModel|NotesModel|WindowTask)"))))
          .should()
          .callConstructor(Problem.Refused.class, String.class, String.class, String.class)
          .orShould()
          .callConstructor(Problem.WrongUse.class, String.class, String.class)
          .orShould()
          .callConstructor(
              Problem.Outside.class, String.class, String.class, String.class, Throwable.class);

  /**
   * The message of an exception is English: only what tells it to commands, keeps it in a log or
   * looks into it may take it. Everyone else has {@code Elsewhere} tell it.
   */
  static final ArchRule messages_of_exceptions_reach_a_screen_through_elsewhere_only =
      noClasses()
          .that(
              resideInAPackage("org.siltbench.station..")
                  .and(
                      not(
                          resideInAnyPackage(
                              "..station.command..",
                              "..station.share..",
                              "..station.backup..",
                              "..station.json..",
                              "..station.elsewhere..")))
                  .and(
                      not(
                          nameMatching(
                              ".*\\.(LedgerFile|LineText|BadLine|Table|LabFolder|DiskTrouble"
                                  + "|Reception)(\\$.*)?"))))
          .should()
          .callMethodWhere(
              JavaCall.Predicates.target(HasName.Predicates.name("getMessage"))
                  .and(
                      JavaCall.Predicates.target(
                          HasOwner.Predicates.With.owner(assignableTo(Throwable.class)))));

  static final ArchRule only_the_start_of_the_program_asks_the_machine_for_the_time =
      noClasses()
          .that()
          .resideInAPackage("org.siltbench.station..")
          .and()
          .doNotHaveFullyQualifiedName("org.siltbench.station.command.Main")
          .should()
          .callMethod(Instant.class, "now")
          .orShould()
          .callMethod(Clock.class, "systemUTC")
          .orShould()
          .callMethod(Clock.class, "systemDefaultZone")
          .orShould()
          .callMethod(Clock.class, "system", java.time.ZoneId.class)
          .orShould()
          .callMethod(java.time.OffsetDateTime.class, "now")
          .orShould()
          .callMethod(java.time.LocalDate.class, "now");

  static final ArchRule the_serial_library_stays_with_the_drivers =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.siltbench.balance..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.fazecast..");

  static final ArchRule the_work_knows_no_command_and_no_window =
      noClasses()
          .that()
          .resideInAnyPackage(
              "..station.work..",
              "..station.life..",
              "..station.bench..",
              "..station.ledger..",
              "..station.register..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("..station.command..", "..station.window..", "picocli..");

  static final ArchRule nobody_knows_the_window =
      noClasses()
          .that()
          .resideOutsideOfPackage("..station.window..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("..station.window..");

  static final ArchRule models_know_no_scene_graph =
      noClasses()
          .that(
              resideInAPackage("..station.window..")
                  .and(
                      resideInAPackage("..station.window.desk..")
                          .or(HasName.Predicates.nameMatching(".*Model(\\$.*)?"))))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javafx.scene..", "javafx.stage..", "javafx.application..");

  static final ArchRule the_window_does_no_arithmetic =
      noClasses()
          .that()
          .resideInAPackage("..station.window..")
          .should()
          .callMethodWhere(
              JavaCall.Predicates.target(
                      HasOwner.Predicates.With.owner(
                          resideInAPackage("org.siltbench.calc.quantity..")))
                  .and(
                      JavaCall.Predicates.target(
                          HasName.Predicates.nameMatching(
                              "plus|minus|times|dividedBy|multipliedBy|negated|over"))))
          .orShould()
          .dependOnClassesThat(
              resideInAPackage("org.siltbench.calc..")
                  .and(
                      not(
                          resideInAnyPackage(
                              "..calc.quantity..",
                              "..calc.id..",
                              "..calc.method..",
                              "..calc.constant..",
                              "..calc.reason.."))));

  static final ArchRule the_ledger_knows_nothing_of_the_work =
      noClasses()
          .that()
          .resideInAnyPackage("..station.ledger..", "..station.register..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("..station.work..", "..station.life..");

  static final ArchRule arithmetic_knows_no_other_room =
      noClasses()
          .that()
          .resideInAPackage("org.siltbench.calc..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.siltbench.balance..", "org.siltbench.labels..", "org.siltbench.station..");

  static final ArchRule drivers_and_papers_know_only_arithmetic =
      noClasses()
          .that()
          .resideInAnyPackage("org.siltbench.balance..", "org.siltbench.labels..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.siltbench.station..");

  static final ArchRule papers_and_drivers_do_not_know_each_other =
      noClasses()
          .that()
          .resideInAPackage("org.siltbench.labels..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.siltbench.balance..");

  static final ArchRule commands_are_found_by_their_providers_only =
      classes().that().implement(org.siltbench.station.command.Task.class).should().notBePublic();
}
