package org.siltbench.station.life;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.siltbench.calc.id.BatchCode;
import org.siltbench.calc.id.BenchCode;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;

/** A real lab folder with a clock that a test moves, and entries written straight into it. */
public final class TestLab implements AutoCloseable {

  /** A clock that stands until it is moved. */
  public static final class HandClock extends Clock {
    private Instant now = Instant.parse("2026-05-14T08:00:00Z");

    public void advance(Duration by) {
      now = now.plus(by);
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      throw new UnsupportedOperationException();
    }

    @Override
    public Instant instant() {
      return now;
    }
  }

  private final HandClock clock = new HandClock();
  private final Path folder;
  private Bench bench;

  public TestLab(Path folder, long seed) {
    this.folder = folder;
    this.bench = LabFolder.create(folder, "test", false, setting(seed));
  }

  private Setting setting(long seed) {
    return new Setting("AB", clock, new Random(seed), new LifeSubjects(), note -> {});
  }

  public Bench bench() {
    return bench;
  }

  public HandClock clock() {
    return clock;
  }

  public Path folder() {
    return folder;
  }

  /** Closes and opens the lab again. */
  public void reopen() {
    bench.close();
    bench = LabFolder.open(folder, setting(1));
  }

  /** Writes one entry as it is given: field, value, field, value, … */
  public Entry write(String kind, Object... data) {
    clock.advance(Duration.ofSeconds(1));
    Map<String, Object> fields = new LinkedHashMap<>();
    for (int i = 0; i < data.length; i += 2) {
      fields.put((String) data[i], data[i + 1]);
    }
    return bench.act(view -> List.of(new Draft(kind, 1, true, fields))).get(0);
  }

  /** A batch with one filter for each role; answers the filter IDs in order. */
  public List<String> batch(String method, String... roles) {
    BatchCode code = BatchCode.of(new BenchCode(bench.code()), 1);
    List<Map<String, String>> filters = new ArrayList<>();
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < roles.length; i++) {
      String id = code.filters(roles.length).get(i).text();
      ids.add(id);
      filters.add(Map.of("filter", id, "role", roles[i]));
    }
    write(
        "batch.created",
        "batch",
        code.text(),
        "name",
        "storm",
        "lot",
        "L1",
        "method",
        method,
        "filters",
        filters);
    return ids;
  }

  /** A pre-weigh mass. */
  public Entry pre(String filter, String grams) {
    return write("weighing", "filter", filter, "status", "pre", "round", 1L, "mass_g", grams);
  }

  /** A filter's state. */
  public FilterState state(String filter) {
    return Filters.require(bench.register(), filter);
  }

  @Override
  public void close() {
    bench.close();
  }
}
