package org.siltbench.station.fault;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.ledger.Hlc;
import org.siltbench.station.ledger.LineText;

/** Acts of one to five entries, short ones and ones over several sectors. */
final class FaultEntries {

  private final Random random;

  FaultEntries(Random random) {
    this.random = random;
  }

  /** One entry, or several that belong together. */
  List<Entry> act(long first) {
    List<Entry> act = new ArrayList<>();
    int size = random.nextBoolean() ? 1 : 2 + random.nextInt(4);
    for (long seq = first; seq < first + size; seq++) {
      act.add(entry(seq));
    }
    return act;
  }

  private Entry entry(long seq) {
    String raw = "+ 0.1234 g µ\n".repeat(random.nextInt(1, 200));
    OffsetDateTime at = Instant.ofEpochSecond(1_700_000_000L + seq).atOffset(ZoneOffset.UTC);
    return new Entry(
        LineText.VERSION,
        new EntryRef("BT24", seq),
        at,
        new Hlc(1_700_000_000_000L + seq, 0),
        "AB",
        "weighing",
        1,
        true,
        Map.of("raw", raw, "n", random.nextLong()));
  }
}
