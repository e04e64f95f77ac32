package org.siltbench.station.window.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.people.People;
import org.siltbench.station.people.Right;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.work.scan.BagScan;

/** Signing on, scans and what the desk watches over, without a screen. */
class DeskTest {

  @TempDir Path folder;

  private static Entry note(Desk desk) {
    return desk.lab()
        .act(register -> List.of(new Draft("bag.closed", 1, true, Map.of("filter", "F"))))
        .get(0);
  }

  @Test
  void entries_carry_who_is_signed_on_at_that_moment() {
    try (TestDesk bench = new TestDesk(folder)) {
      Desk desk = bench.desk();
      desk.signOn().on(desk.signOn().check("rk", new char[0]));
      assertEquals("RK", note(desk).by());
      desk.signOn().on(desk.signOn().check("mv", new char[0]));
      assertEquals("MV", note(desk).by());
      desk.signOn().off();
      desk.record(() -> note(desk), done -> {});
      assertEquals("Nobody is signed on at this bench.", desk.notices().list().get(0).what());
    }
  }

  @Test
  void only_the_screen_in_front_looks_again_when_something_was_recorded() {
    try (TestDesk bench = new TestDesk(folder)) {
      Desk desk = bench.desk();
      List<String> looks = new ArrayList<>();
      desk.changesInFront("log", () -> looks.add("log"));
      desk.changesInFront("drying", () -> looks.add("drying"));
      desk.go("log");
      desk.changed();
      desk.go("drying");
      desk.changed();
      assertEquals(List.of("log", "drying"), looks);
    }
  }

  @Test
  void whoever_does_nothing_for_long_is_signed_off_and_a_badge_asks_for_the_pin() {
    People people = new People(folder, Clock.systemUTC(), new SecureRandom());
    folder.toFile().mkdirs();
    try (TestDesk bench = new TestDesk(folder)) {
      people.put("SU", Right.SUPERVISE, "8642".toCharArray(), "BADGE-17");
      Desk desk = bench.desk();
      assertTrue(desk.signOn().asksPin());
      desk.signOn().on(desk.signOn().check("su", "8642".toCharArray()));
      assertEquals("SU", desk.signOn().initials().get());
      StringBuilder asked = new StringBuilder();
      new Scans(desk, Optional::empty, asked::append).take("BADGE-17");
      assertEquals("SU", asked.toString());
      bench.clock().advance(Duration.ofHours(11));
      desk.tick();
      assertEquals("", desk.signOn().initials().get());
    }
  }

  @Test
  void a_scan_goes_to_the_screen_in_front_else_says_where_the_bag_is_wanted() {
    try (TestDesk bench = new TestDesk(folder)) {
      String id = bench.batch("storm", "sm-2540d-23", "sample").get(0);
      Desk desk = bench.desk();
      StringBuilder taken = new StringBuilder();
      ScanTaker front =
          new ScanTaker() {
            @Override
            public boolean scanned(BagScan bag) {
              taken.append(bag.filter().text());
              return true;
            }

            @Override
            public boolean scannedOther(String text) {
              taken.append(' ').append(text);
              return text.equals("DISH 7");
            }
          };
      new Scans(desk, () -> Optional.of(front), who -> {}).take(id.toLowerCase(Locale.ROOT));
      assertEquals(id, taken.toString());
      new Scans(desk, () -> Optional.of(front), who -> {}).take("DISH 7");
      assertEquals(id + " DISH 7", taken.toString());
      assertEquals(0, desk.notices().list().size());
      new Scans(desk, Optional::empty, who -> {}).take(id);
      assertEquals("It is wanted at Pre-weigh.", desk.notices().list().get(0).next());
    }
  }

  @Test
  void a_scan_with_another_keyboard_layout_is_repaired_or_refused_never_misread() {
    try (TestDesk bench = new TestDesk(folder)) {
      String id = bench.batch("storm", "sm-2540d-23", "sample").get(0);
      Desk desk = bench.desk();
      Scans scans = new Scans(desk, Optional::empty, who -> {});
      String french =
          id.chars()
              .mapToObj(c -> Character.isDigit(c) ? "à&é\"'(-è_ç".charAt(c - '0') : (char) c)
              .map(String::valueOf)
              .collect(Collectors.joining());
      scans.take(french);
      Notice told = desk.notices().list().get(0);
      assertTrue(told.what().contains(id) || told.level() == Notice.Level.REFUSED, told.toString());
    }
  }

  @Test
  void a_clock_that_goes_back_is_told_with_what_is_safe() {
    try (TestDesk bench = new TestDesk(folder)) {
      bench.desk().tick();
      bench.clock().advance(Duration.ofSeconds(-90));
      bench.desk().tick();
      Notice told = bench.desk().notices().list().get(0);
      assertTrue(told.what().contains("90 s"), told.what());
      assertTrue(told.safe().contains("safe"));
    }
  }
}
