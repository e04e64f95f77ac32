package org.siltbench.station.life;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.siltbench.station.Problem;
import org.siltbench.station.life.Outcome.Goes;
import org.siltbench.station.life.Outcome.Refuses;

class LifeTest {

  @Test
  void everyStatusActAndRoleHasAnAnswerAndEveryRefusalAWayOut() {
    for (Status status : Status.values()) {
      for (Act act : Act.values()) {
        for (Role role : Role.values()) {
          Outcome outcome = Life.outcome(status, act, role);
          assertNotNull(outcome);
          if (outcome instanceof Refuses no) {
            assertTrue(no.why().endsWith(".") && no.wayOut().endsWith("."), no.toString());
          }
        }
      }
    }
  }

  @Test
  void theUsualLifeRunsFromPlannedToReported() {
    Status status = Status.PLANNED;
    for (Act act :
        new Act[] {
          Act.PRE_DRY, Act.PRE_WEIGH, Act.LABEL, Act.CLOSE_BAG, Act.AUDIT, Act.ISSUE, Act.RECEIVE,
          Act.DRY, Act.END_DRY, Act.POST_WEIGH, Act.DRY, Act.END_DRY, Act.POST_WEIGH, Act.PROVE,
          Act.RELEASE
        }) {
      status = Life.require("X", status, act, Role.SAMPLE);
    }
    assertEquals(Status.REPORTED, status);
  }

  @Test
  void aControlFilterNeverTravelsAndGoesThroughEveryOven() {
    for (Role role : Life.BENCH_ROLES) {
      assertInstanceOf(Refuses.class, Life.outcome(Status.PRE_WEIGHED, Act.ISSUE, role));
      assertEquals(new Goes(Status.DRYING), Life.outcome(Status.PRE_WEIGHED, Act.DRY, role));
    }
    assertEquals(new Goes(Status.DRYING), Life.outcome(Status.REPORTED, Act.DRY, Role.CONTROL));
    assertInstanceOf(Refuses.class, Life.outcome(Status.REPORTED, Act.DRY, Role.SAMPLE));
  }

  @Test
  void aTravellingFilterIsNeitherDriedNorWeighedBeforeItWasReceived() {
    for (Role role : DrawnTable.travelling()) {
      for (Status status : EnumSet.of(Status.PLANNED, Status.PRE_WEIGHED, Status.ISSUED)) {
        assertInstanceOf(Refuses.class, Life.outcome(status, Act.DRY, role));
        assertInstanceOf(Refuses.class, Life.outcome(status, Act.POST_WEIGH, role));
      }
    }
  }

  @Test
  void postWeighingNeedsADryingBeforeEachMass() {
    Set<Status> allowed = EnumSet.of(Status.DRYING);
    for (Status status : Status.values()) {
      boolean goes = Life.outcome(status, Act.POST_WEIGH, Role.SAMPLE) instanceof Goes;
      assertEquals(allowed.contains(status), goes, status.code());
    }
  }

  @Test
  void aRejectedFilterStaysRejected() {
    for (Act act : Act.values()) {
      if (Life.outcome(Status.REJECTED, act, Role.SAMPLE) instanceof Goes goes) {
        assertEquals(Status.REJECTED, goes.to());
      }
    }
  }

  @Test
  void aRefusalNamesTheFilterAndItsStatus() {
    Problem.Refused no =
        assertThrows(
            Problem.Refused.class,
            () -> Life.require("F7", Status.ISSUED, Act.POST_WEIGH, Role.SAMPLE));
    assertTrue(no.what().contains("F7") && no.what().contains("issued"), no.what());
    assertEquals(1, no.exitStatus());
  }

  @Test
  void thePageInDocsShowsThisTable() throws IOException {
    Path page = Path.of(System.getProperty("siltbench.root"), "docs", "life-of-a-filter.md");
    String drawn = new DrawnTable().markdown();
    assertTrue(
        Files.readString(page).contains(drawn),
        () -> "docs/life-of-a-filter.md does not show the table in force; it should be:\n" + drawn);
  }
}
