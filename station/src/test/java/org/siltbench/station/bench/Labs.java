package org.siltbench.station.bench;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.siltbench.station.ledger.Disk;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.EntryRef;

/** Makes labs for tests. */
public final class Labs {

  /** Sentences the benches had for the person. */
  public final List<String> notes = Collections.synchronizedList(new ArrayList<>());

  private final long seed;

  public Labs(long seed) {
    this.seed = seed;
  }

  public Setting setting() {
    return new Setting(
        "AB",
        Clock.fixed(Instant.parse("2026-03-02T08:00:00Z"), ZoneOffset.ofHours(1)),
        new Random(seed),
        new PlainSubjects(),
        note -> notes.add(note.english()));
  }

  /** On a clock and a disk of the test's own. */
  public Setting setting(Clock clock, Disk disk) {
    return new Setting(
        "AB",
        clock,
        new Random(seed),
        new PlainSubjects(),
        note -> notes.add(note.english()),
        disk);
  }

  public OpenLab create(Path folder) {
    return LabFolder.create(folder, "North", false, setting());
  }

  public OpenLab open(Path folder) {
    return LabFolder.open(folder, setting());
  }

  public static Draft weighing(String filter, String mass) {
    return new Draft("weighing", 1, true, Map.of("filter", filter, "mass_g", mass));
  }

  public static Draft correction(EntryRef entry, String field, Object value) {
    return new Draft(
        "corrected",
        1,
        true,
        Map.of("entry", entry.toString(), "set", Map.of(field, value), "reason", "misread"));
  }

  public static String export(OpenLab lab) {
    StringBuilder text = new StringBuilder();
    lab.export(text);
    return text.toString();
  }
}
