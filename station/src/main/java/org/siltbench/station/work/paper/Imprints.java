package org.siltbench.station.work.paper;

import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import org.siltbench.labels.Imprint;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.ledger.Position;
import org.siltbench.station.life.Fields;

/** What the papers of a bench say about themselves. */
public final class Imprints {

  private Imprints() {}

  /** The imprint of a paper made now. */
  public static Imprint of(Bench bench) {
    String name =
        bench
            .register()
            .entry(new EntryRef(bench.code(), 1))
            .map(Imprints::name)
            .orElse(bench.code());
    Position head = bench instanceof OpenLab lab ? lab.ledgers().get(bench.code()) : null;
    return new Imprint(
        name,
        bench.code(),
        head == null ? null : head.sum(),
        head == null ? 0 : head.seq(),
        OffsetDateTime.now(bench.clock()).truncatedTo(ChronoUnit.SECONDS),
        bench.practice(),
        Imprint.PageSize.A4);
  }

  private static String name(Entry created) {
    return Fields.of(created).text("name");
  }
}
