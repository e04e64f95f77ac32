package org.siltbench.station.command.balance;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Balances;
import org.siltbench.balance.ReadingSource;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.capture.Recorder;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import picocli.CommandLine.Option;

/** {@code balance watch}. */
final class WatchCommand implements Task {

  private static final Duration SLICE = Duration.ofMillis(500);
  private static final long CAPTURE_BYTES = 16L << 20;

  @Option(
      names = "--balance",
      required = true,
      paramLabel = "SPEC",
      description = "serial:PATH, tcp:HOST:PORT, replay:FILE, typed or practice")
  private String spec = "";

  @Option(names = "--count", paramLabel = "N", description = "stop after so many readings")
  private int count;

  @Option(names = "--for", paramLabel = "SPAN", description = "stop after this time, as 30s or 5m")
  private @Nullable String span;

  @Option(
      names = "--capture",
      paramLabel = "DIR",
      description = "record the bytes to a capture file in this folder")
  private @Nullable Path capture;

  @Override
  public int run(Session session) throws IOException, InterruptedException {
    if (session.json() && count == 0 && span == null) {
      throw new Problem.WrongUse(
          "One JSON document needs an end.", "Add --count N or --for SPAN; or use --events.");
    }
    if (count < 0) {
      throw new Problem.WrongUse("--count cannot be below 1.", "Write --count 10.");
    }
    LinkSpec link = paced(Spec.parse(spec));
    if (capture != null && link instanceof LinkSpec.Typed) {
      throw new Problem.WrongUse(
          "A balance that types sends no bytes to record.", "Leave --capture out.");
    }
    try {
      return capture == null
          ? watch(session, session.balances().open(link))
          : record(session, link);
    } catch (IllegalArgumentException e) {
      throw Spec.wrong(e);
    }
  }

  /** For the eye the practice balance keeps real time, unless an end is given. */
  private LinkSpec paced(LinkSpec link) {
    boolean endless = count == 0 && span == null;
    boolean simulated = link instanceof LinkSpec.Practice && link.options().speed() == null;
    return endless && simulated ? link.with(link.options().withSpeed(1.0)) : link;
  }

  private int record(Session session, LinkSpec link) throws IOException, InterruptedException {
    Path folder = capture == null ? Path.of(".") : capture;
    Timebase wall = Timebase.system();
    OffsetDateTime began = OffsetDateTime.now(session.clock());
    try (Recorder recorder =
        new Recorder(folder, link.toString(), began, wall.nanos(), CAPTURE_BYTES)) {
      Recording tap = new Recording(recorder);
      Balances balances = new Balances(wall, session.labFolder().resolve("formats")).tappedBy(tap);
      int status = watch(session, balances.open(link));
      tap.throwIfFailed();
      Path file = recorder.finish();
      session.message("Captured in " + file + '.');
      return status;
    }
  }

  private int watch(Session session, ReadingSource opened)
      throws IOException, InterruptedException {
    long longest = span == null ? Long.MAX_VALUE : Times.span(span).toNanos();
    try (ReadingSource source = opened) {
      Watch watch = new Watch(session);
      while (!watch.isOver(count, longest)) {
        watch.take(source.next(SLICE));
      }
      watch.tell(source);
      return watch.readings() == 0 ? none(session) : 0;
    }
  }

  private static int none(Session session) {
    session.message("Nothing readable came.");
    session.message(
        "Is the balance on, does it send by itself? siltbench balance find tries line settings,"
            + " siltbench balance learn learns its format.");
    return 3;
  }

  /** Writes what passes to a recorder and keeps the first failure. */
  private static final class Recording implements org.siltbench.balance.Tap {

    private final Recorder recorder;
    private @Nullable IOException failure;

    Recording(Recorder recorder) {
      this.recorder = recorder;
    }

    @Override
    public void bytes(byte[] bytes, int length, long nanos) {
      try {
        recorder.accept(bytes, length, nanos);
      } catch (IOException e) {
        failure = failure == null ? e : failure;
      }
    }

    void throwIfFailed() throws IOException {
      if (failure != null) {
        throw failure;
      }
    }
  }
}
