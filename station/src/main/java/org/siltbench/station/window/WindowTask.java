package org.siltbench.station.window;

import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ThreadFactory;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Timebase;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.window.desk.Prefs;
import org.siltbench.station.work.weigh.Scale;
import picocli.CommandLine.Option;

/** {@code window}. */
final class WindowTask implements Task {

  private static final double WIDTH = 1366;
  private static final double HEIGHT = 768;

  @Option(
      names = "--balance",
      paramLabel = "SPEC",
      description = "the balance to listen to; default: the one in the window's settings")
  private @Nullable String balance;

  @Override
  public int run(Session session) throws InterruptedException {
    requireDisplay(session);
    if (balance != null) {
      Scale.parse(balance);
    }
    if (!session.labExists()) {
      session.create("bench", false).close();
    }
    try (OpenLab lab = LabFolder.open(session.labFolder(), session.setting())) {
      return run(session, lab);
    }
  }

  private int run(Session session, OpenLab lab) throws InterruptedException {
    ExecutorService bench = thread("bench work");
    ExecutorService printing = thread("printing");
    ExecutorService runs = thread("weighing");
    ExecutorService live = threads("balance or scanner");
    CountDownLatch closed = new CountDownLatch(1);
    try (Assembly assembly =
        new Assembly(
            new Assembly.Outside(
                lab,
                session.people(),
                session.balances(),
                Timebase.system(),
                bench,
                printing,
                runs,
                live,
                Platform::runLater,
                cue -> {},
                Locale.getDefault()))) {
      Platform.startup(() -> open(assembly, closed));
      closed.await();
    } finally {
      runs.shutdownNow();
      live.shutdownNow();
      printing.shutdown();
      bench.shutdown();
      Platform.exit();
    }
    return 0;
  }

  private void open(Assembly assembly, CountDownLatch closed) {
    Stage stage = new Stage();
    stage.setOnHidden(event -> closed.countDown());
    BenchStage.show(stage, assembly, System::nanoTime, WIDTH, HEIGHT);
    String spec = balance != null ? balance : assembly.desk().prefs().get(Prefs.Name.BALANCE);
    if (!spec.isEmpty()) {
      assembly.connect(spec);
    }
  }

  private static ExecutorService thread(String name) {
    return Executors.newSingleThreadExecutor(named(name));
  }

  private static ExecutorService threads(String name) {
    return Executors.newCachedThreadPool(named(name));
  }

  private static ThreadFactory named(String name) {
    return work -> {
      Thread thread = new Thread(work, name);
      thread.setDaemon(true);
      return thread;
    };
  }

  private static void requireDisplay(Session session) {
    boolean linux = System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
    boolean display =
        session.variable("DISPLAY").isPresent()
            || System.getProperty("glass.platform", "").equals("Monocle");
    if (linux && !display) {
      throw new Problem.Outside(
          "There is no screen here: the variable DISPLAY is not set.",
          "Nothing was changed.",
          "Start it on a desktop; every step can also be done by a command: siltbench --help.",
          null);
    }
  }
}
