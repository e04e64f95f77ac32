package org.siltbench.station.work.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.SourceEvent;
import org.siltbench.calc.reason.Reason;
import org.siltbench.station.Problem;

class LinkWatchTest {

  private final List<WeighEvent> told = new ArrayList<>();
  private final LinkWatch watch =
      new LinkWatch(new Patience(Duration.ofSeconds(10), Duration.ofSeconds(60)), told::add);

  private static long nanos(double seconds) {
    return (long) (seconds * 1e9);
  }

  private void quiet(double seconds) {
    watch.note(new SourceEvent.Quiet(nanos(seconds), Instant.EPOCH));
  }

  private void unreadable(double seconds, String why) {
    watch.note(new SourceEvent.Unreadable("?", Reason.plain(why), nanos(seconds), Instant.EPOCH));
  }

  @Test
  void silence_is_told_once_and_ends_the_work_in_the_end() {
    quiet(100);
    quiet(109);
    assertTrue(told.isEmpty());
    quiet(110);
    quiet(120);
    assertEquals(1, told.size());
    assertThrows(Problem.Outside.class, () -> quiet(160));
  }

  @Test
  void lines_that_cannot_be_read_are_told_once_for_each_reason_and_are_no_sign_of_life() {
    unreadable(0, "no unit");
    unreadable(5, "no unit");
    unreadable(6, "wrong unit");
    assertEquals(2, told.size());
    unreadable(11, "wrong unit");
    assertTrue(told.get(2) instanceof WeighEvent.Silent);
    assertThrows(Problem.Outside.class, () -> unreadable(60, "wrong unit"));
  }

  @Test
  void a_lost_link_that_comes_back_in_time_is_forgiven() {
    watch.note(new SourceEvent.Lost(Reason.plain("pulled"), nanos(5), Instant.EPOCH));
    quiet(40);
    watch.note(new SourceEvent.Back("ttyUSB1", nanos(60), Instant.EPOCH));
    quiet(65);
    assertEquals(2, told.size());
    assertTrue(told.get(1) instanceof WeighEvent.LinkBack);
  }

  @Test
  void a_link_that_stays_away_ends_with_a_message_that_says_what_is_safe() {
    watch.note(new SourceEvent.Lost(Reason.plain("pulled"), nanos(5), Instant.EPOCH));
    Problem.Outside end = assertThrows(Problem.Outside.class, () -> quiet(65));
    assertTrue(end.safe().contains("recorded"), end.safe());
  }
}
