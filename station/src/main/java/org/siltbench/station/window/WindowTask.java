package org.siltbench.station.window;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.window.desk.PracticeFolder;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.weigh.Scale;
import picocli.CommandLine.Option;

/** {@code window}. */
final class WindowTask implements Task {

  /** The toolkit warns that it lies on the class path, where it is meant to be; kept strongly. */
  private static final Logger TOOLKIT = Logger.getLogger("javafx");

  private static final String NO_ANSWER = "The screen that DISPLAY names does not answer.";

  private final BooleanSupplier toolkit;
  private final Runnable end;

  WindowTask() {
    this(WindowTask::startToolkit, Platform::exit);
  }

  /**
   * Over a toolkit from outside.
   *
   * @param toolkit starts it, false if there is no screen after all
   * @param end ends it
   */
  WindowTask(BooleanSupplier toolkit, Runnable end) {
    this.toolkit = toolkit;
    this.end = end;
  }

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
    TOOLKIT.setLevel(Level.SEVERE);
    boolean known = session.labExists();
    boolean there = known || toolkit.getAsBoolean();
    if (!there) {
      throw noScreen(NO_ANSWER);
    }
    Optional<Session> lab = known ? Optional.of(session) : welcomed(session);
    Threads threads = new Threads();
    try {
      boolean again = lab.isPresent();
      for (boolean started = !known; again; started = true) {
        again = show(lab.get(), threads, started);
      }
    } finally {
      threads.close();
      end.run();
    }
    return 0;
  }

  /** Nothing is made before the person has chosen; nothing at all where the window is closed. */
  private static Optional<Session> welcomed(Session session) throws InterruptedException {
    Welcome.Wish wish = ask(session.labFolder());
    if (wish == Welcome.Wish.NOTHING) {
      return Optional.empty();
    }
    boolean practice = wish == Welcome.Wish.PRACTICE;
    Session over = practice ? session.over(PracticeFolder.beside(session.labFolder())) : session;
    if (!over.labExists()) {
      over.create(practice ? "practice" : "bench", practice).close();
    }
    return Optional.of(over);
  }

  private static Welcome.Wish ask(Path folder) throws InterruptedException {
    Platform.setImplicitExit(false);
    CompletableFuture<Welcome.Wish> answer = new CompletableFuture<>();
    Texts texts = Texts.of(Welcome.class, Opened.locale(""));
    Platform.runLater(
        () -> {
          try {
            var unused =
                new Welcome(new Stage(), texts, folder, Opening.WIDTH, Opening.HEIGHT)
                    .wish()
                    .thenAccept(answer::complete);
          } catch (RuntimeException e) {
            answer.completeExceptionally(e);
          }
        });
    try {
      return answer.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    }
  }

  /** Shows the window until it is closed; true if it is to be opened again. */
  private boolean show(Session session, Threads threads, boolean started)
      throws InterruptedException {
    Gate screen = new Gate(Platform::runLater);
    Future<Opened> assembling =
        threads.live().submit(() -> Opened.of(session, threads, screen, balance));
    boolean there = started || toolkit.getAsBoolean();
    try (Opened opened = await(assembling)) {
      if (!there) {
        throw noScreen(NO_ANSWER);
      }
      Platform.setImplicitExit(false);
      screen.open();
      Opening opening = new Opening(opened);
      Platform.runLater(opening::show);
      return opening.awaitEnd();
    }
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
