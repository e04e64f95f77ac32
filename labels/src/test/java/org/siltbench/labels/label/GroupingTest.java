package org.siltbench.labels.label;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.siltbench.calc.id.FilterId;
import org.siltbench.labels.AlderFork;

class GroupingTest {

  @Test
  void aFilterIdIsGroupedAsEverywhereElse() {
    for (FilterId id : AlderFork.filters(200)) {
      assertEquals(List.of(id.grouped()), Grouping.lines(id.text(), 1));
    }
  }

  @Test
  void aLongIdMayTakeTwoLines() {
    assertEquals(List.of("K3DF-07-", "019"), Grouping.lines("K3DF-07-019", 2));
    assertEquals(List.of("ABC DEF", "GHK"), Grouping.lines("ABCDEFGHK", 2));
  }

  @Test
  void otherTextsArePartedIntoEvenGroups() {
    assertEquals(List.of("1234", "567", "890"), Grouping.of("1234567890"));
    assertEquals(List.of("12"), Grouping.of("12"));
  }
}
