package org.siltbench.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.siltbench.station.bench.Labs.weighing;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.ledger.Hlc;
import org.siltbench.station.ledger.LineText;

/** What another bench, or someone who claims to be one, may hand over. */
class ReceptionTest {

  @TempDir Path folder;

  private static String line(int v, String bench, long seq, long millis, String prev) {
    Entry entry =
        new Entry(
            v,
            new EntryRef(bench, seq),
            OffsetDateTime.parse("2026-03-02T08:00:00+01:00"),
            new Hlc(millis, 0),
            "XX",
            "weighing",
            1,
            true,
            Map.of("filter", "F", "mass_g", "0.1"));
    return new String(LineText.write(entry, prev), StandardCharsets.UTF_8);
  }

  private static void refused(OpenLab lab, String bench, String... lines) {
    assertThrows(Problem.Refused.class, () -> lab.receive(bench, List.of(lines)));
  }

  @Test
  void onlyTheContinuationOfAnotherBenchIsTakenIn() {
    try (OpenLab lab = new Labs(1).create(folder.resolve("lab"))) {
      long now = 1_772_000_000_000L;
      String first = line(1, "BT24", 1, now, LineText.NO_HASH);
      refused(lab, "BT24", first.replace("0.1", "0.2"));
      refused(lab, "BT24", line(2, "BT24", 1, now, LineText.NO_HASH));
      refused(lab, "BT24", line(1, "BT24", 2, now, LineText.NO_HASH));
      refused(lab, "BT24", line(1, "CC24", 1, now, LineText.NO_HASH));
      refused(lab, "BT24", line(1, "BT24", 1, Long.MAX_VALUE, LineText.NO_HASH));
      refused(lab, "BT24", line(1, "BT24", 1, 9_000_000_000_000L, LineText.NO_HASH));
      refused(lab, lab.code(), line(1, lab.code(), 2, now, LineText.NO_HASH));
      refused(lab, "../x", first);
      refused(lab, "BT24", "", "{}", "\u0000");
      assertEquals(1, lab.receive("BT24", List.of(first)));
      assertEquals(0, lab.receive("BT24", List.of(first)), "the same again changes nothing");
      refused(lab, "BT24", line(1, "BT24", 2, now + 1, LineText.NO_HASH));
      lab.act(view -> List.of(weighing("F", "0.3")));
      List<Entry> all = new ArrayList<>();
      lab.register().each(all::add);
      assertEquals(3, all.size());
    }
  }
}
