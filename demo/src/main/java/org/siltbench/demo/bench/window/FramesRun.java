package org.siltbench.demo.bench.window;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.json.Json;
import org.siltbench.station.life.LifeSubjects;
import org.siltbench.station.people.People;
import org.siltbench.station.people.Person;
import org.siltbench.station.people.Right;
import org.siltbench.station.window.Assembly;
import org.siltbench.station.window.BenchStage;
import org.siltbench.station.window.desk.Cues.Cue;
import org.siltbench.station.work.batch.NewBatch;
import org.siltbench.station.work.method.MethodBook;

/** A pre-weighing in real time in the real window; each frame's distance from the last is kept. */
public final class FramesRun {

  private static final double LATE_MS = 100;
  private static final int MOST_FRAMES = 100 * 60 * 60;

  private final double[] gaps = new double[MOST_FRAMES];
  private final AtomicInteger recorded = new AtomicInteger();
  private int count;
  private long last;

  private FramesRun() {}

  /** Runs it: the lab folder to make, the minutes, the file for the answer. */
  public static void main(String[] args) throws Exception {
    new FramesRun().run(Path.of(args[1]), Integer.parseInt(args[2]), Path.of(args[3]));
    System.exit(0);
  }

  private void run(Path folder, int minutes, Path answer) throws Exception {
    Clock clock = Clock.system(ZoneId.systemDefault());
    Setting setting = new Setting("AB", clock, new SecureRandom(), new LifeSubjects(), note -> {});
    try (OpenLab lab = LabFolder.create(folder, "frames", true, setting)) {
      new NewBatch("frames", "L", "epa-160.2", 400, Map.of(), 0).record(lab, MethodBook.of(folder));
      Platform.startup(() -> {});
      ExecutorService threads = Executors.newCachedThreadPool();
      Assembly assembly =
          new Assembly(
              new Assembly.Outside(
                  lab,
                  new People(folder, clock, new SecureRandom()),
                  spec -> new Balances(Timebase.system(), folder.resolve("formats")).open(spec),
                  Timebase.system(),
                  Executors.newSingleThreadExecutor(),
                  threads,
                  Executors.newSingleThreadExecutor(),
                  threads,
                  threads,
                  Platform::runLater,
                  cue -> recorded.addAndGet(cue == Cue.RECORDED ? 1 : 0),
                  Locale.ENGLISH));
      Platform.runLater(() -> show(assembly));
      TimeUnit.SECONDS.sleep(20); // start-up is another measure
      Platform.runLater(this::watch);
      TimeUnit.MINUTES.sleep(minutes);
      Files.writeString(answer, Json.write(result(minutes)));
      assembly.close();
    }
  }

  private void show(Assembly assembly) {
    Stage stage = new Stage();
    BenchStage window = BenchStage.show(stage, assembly, System::nanoTime, 1366, 768);
    assembly.desk().signOn().on(new Person("AB", Right.SUPERVISE));
    assembly.connect("practice?speed=1");
    assembly.desk().go("preweigh");
    new AnimationTimer() {
      private int frames;

      @Override
      public void handle(long now) {
        if (++frames == 300) {
          stop();
          press(window);
        }
      }
    }.start();
  }

  private static void press(BenchStage window) {
    Event.fireEvent(
        window.scene().getRoot(),
        new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.F12, false, false, false, false));
  }

  private void watch() {
    last = System.nanoTime();
    new AnimationTimer() {
      @Override
      public void handle(long now) {
        long at = System.nanoTime();
        if (count < MOST_FRAMES) {
          gaps[count++] = (at - last) / 1e6;
        }
        last = at;
      }
    }.start();
  }

  private Map<String, Object> result(int minutes) {
    double[] sorted = Arrays.copyOf(gaps, count);
    Arrays.sort(sorted);
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("measure", "frames");
    result.put("minutes", (long) minutes);
    result.put("frames", (long) sorted.length);
    result.put("masses_recorded", (long) recorded.get());
    result.put("p50_ms", rounded(sorted[sorted.length / 2]));
    result.put("p99_ms", rounded(sorted[sorted.length * 99 / 100]));
    result.put("most_ms", rounded(sorted[sorted.length - 1]));
    result.put("later_than_100_ms", Arrays.stream(sorted).filter(gap -> gap > LATE_MS).count());
    return result;
  }

  private static String rounded(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
