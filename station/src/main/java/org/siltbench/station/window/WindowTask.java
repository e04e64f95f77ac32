package org.siltbench.station.window;

import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.weigh.Scale;
import picocli.CommandLine.Option;

/** {@code window}. */
final class WindowTask implements Task {

  /** The toolkit warns that it lies on the class path, where it is meant to be; kept strongly. */
  private static final Logger TOOLKIT = Logger.getLogger("javafx");

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
    TOOLKIT.setLevel(Level.SEVERE);
    Threads threads = new Threads();
    try {
      Gate screen = new Gate(Platform::runLater);
      Future<Opened> assembling =
          threads.live().submit(() -> Opened.of(session, threads, screen, balance));
      boolean there = startToolkit();
      try (Opened opened = await(assembling)) {
        if (!there) {
          throw noScreen("The screen that DISPLAY names does not answer.");
        }
        screen.open();
        Opening opening = new Opening(opened);
        Platform.runLater(opening::show);
        opening.awaitEnd();
      }
    } finally {
      threads.close();
    }
    return 0;
  }

  /** False if there is no screen after all. */
  private static boolean startToolkit() {
    try {
      Platform.startup(() -> {});
      return true;
    } catch (UnsupportedOperationException e) {
      return false;
    }
  }

  /** The desk is put together while the toolkit starts. */
  private static Opened await(Future<Opened> assembling) throws InterruptedException {
    try {
      return assembling.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Problem problem) {
        throw problem;
      }
      throw new IllegalStateException(e.getCause());
    }
  }

  private static void requireDisplay(Session session) {
    boolean linux = System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
    boolean display =
        session.variable("DISPLAY").isPresent()
            || System.getProperty("glass.platform", "").equals("Monocle");
    if (linux && !display) {
      throw noScreen("There is no screen here: the variable DISPLAY is not set.");
    }
  }

  private static Problem.Outside noScreen(String what) {
    return new Problem.Outside(
        what,
        "Nothing was changed.",
        "Start it on a desktop; every step can also be done by a command: siltbench --help.",
        null);
  }
}
