package org.siltbench.station.window;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.calc.id.BatchCode;
import org.siltbench.calc.id.BenchCode;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.LifeSubjects;
import org.siltbench.station.people.People;
import org.siltbench.station.people.Person;
import org.siltbench.station.people.Right;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;

/**
 * A desk over a real practice lab, with a clock that a test moves. All on the caller's thread, so
 * that a model can be asked right after it was told; no toolkit is needed.
 */
public final class TestDesk implements AutoCloseable {

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
  private final List<Cues.Cue> heard = new ArrayList<>();
  private final ExecutorService runs = Executors.newSingleThreadExecutor();
  private final ExecutorService live = Executors.newCachedThreadPool();
  private final OpenLab lab;
  private final Assembly assembly;
  private int batches;

  public TestDesk(Path folder) {
    this(folder, Words.SCREEN_ENGLISH);
  }

  public TestDesk(Path folder, Locale locale) {
    this(folder, locale, Runnable::run);
  }

  /** With bench work on an executor of the test's. */
  public TestDesk(Path folder, Locale locale, Executor bench) {
    Setting setting = new Setting("AB", clock, new Random(1), new LifeSubjects(), note -> {});
    lab = LabFolder.create(folder, "test", true, setting);
    assembly =
        new Assembly(
            new Assembly.Outside(
                lab,
                new People(folder, clock, new Random(2)),
                spec -> new Balances(Timebase.system(), folder.resolve("formats")).open(spec),
                Timebase.system(),
                bench,
                Runnable::run,
                runs,
                live,
                Runnable::run,
                Runnable::run,
                heard::add,
                locale));
    desk().signOn().on(new Person("AB", Right.SUPERVISE));
  }

  public Assembly assembly() {
    return assembly;
  }

  public Desk desk() {
    return assembly.desk();
  }

  public HandClock clock() {
    return clock;
  }

  /** Cues given so far. */
  public List<Cues.Cue> heard() {
    return heard;
  }

  /** Writes one entry as it is given: field, value, field, value, … */
  public Entry write(String kind, Object... data) {
    clock.advance(Duration.ofSeconds(1));
    Map<String, Object> fields = new LinkedHashMap<>();
    for (int i = 0; i < data.length; i += 2) {
      fields.put((String) data[i], data[i + 1]);
    }
    Entry entry = lab.act(view -> List.of(new Draft(kind, 1, true, fields))).get(0);
    desk().changed();
    return entry;
  }

  /** A batch with one filter for each role; answers the filter IDs in order. */
  public List<String> batch(String name, String method, String... roles) {
    BatchCode code = BatchCode.of(new BenchCode(lab.code()), ++batches);
    List<String> ids = code.filters(roles.length).stream().map(id -> id.text()).toList();
    List<Map<String, String>> filters = new ArrayList<>();
    for (int i = 0; i < roles.length; i++) {
      filters.add(Map.of("filter", ids.get(i), "role", roles[i]));
    }
    write(
        "batch.created",
        "batch",
        code.text(),
        "name",
        name,
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

  @Override
  public void close() {
    assembly.close();
    runs.shutdownNow();
    live.shutdownNow();
    ended(runs, live);
    lab.close();
  }

  /** Waits for threads that were told to end: none writes once the lab's folder is taken away. */
  static void ended(ExecutorService... all) {
    for (ExecutorService threads : all) {
      ended(threads);
    }
  }

  private static void ended(ExecutorService threads) {
    try {
      if (!threads.awaitTermination(30, TimeUnit.SECONDS)) {
        throw new AssertionError("a thread of the bench goes on");
      }
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }
}
