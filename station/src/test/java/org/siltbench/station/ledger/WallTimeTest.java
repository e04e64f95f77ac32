package org.siltbench.station.ledger;

import static java.time.format.DateTimeFormatter.ISO_OFFSET_DATE_TIME;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Random;
import org.junit.jupiter.api.Test;

class WallTimeTest {

  private static void same(OffsetDateTime time) {
    StringBuilder text = new StringBuilder("at ");
    WallTime.write(time, text);
    assertEquals("at " + ISO_OFFSET_DATE_TIME.format(time), text.toString());
  }

  @Test
  void aTimeIsWrittenAsTheLibraryWritesIt() {
    Random random = new Random(5);
    int[] units = {1_000_000_000, 1_000_000, 10_000_000, 100_000_000, 1_000, 1};
    for (int i = 0; i < 20_000; i++) {
      int unit = units[random.nextInt(units.length)];
      long second = random.nextLong(-62_000_000_000L, 250_000_000_000L);
      int nano = random.nextInt(1_000_000_000) / unit * unit;
      ZoneOffset offset = ZoneOffset.ofTotalSeconds(60 * random.nextInt(-1080, 1081));
      same(LocalDateTime.ofEpochSecond(second, nano, ZoneOffset.UTC).atOffset(offset));
    }
  }

  @Test
  void soIsOneAtTheEdges() {
    for (int year : new int[] {-1, 0, 999, 1000, 2026, 9999, 10_000}) {
      for (int offset : new int[] {0, 1, -1, 60, -60, 3599, 3600, -64_800, 64_800}) {
        same(OffsetDateTime.of(year, 1, 2, 3, 4, 5, 0, ZoneOffset.ofTotalSeconds(offset)));
        same(
            OffsetDateTime.of(
                year, 12, 31, 23, 59, 59, 999_999_999, ZoneOffset.ofTotalSeconds(offset)));
      }
    }
  }
}
