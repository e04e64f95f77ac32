package org.siltbench.balance.practice;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.VirtualTime;
import org.siltbench.balance.link.Pacer;

/**
 * The practice balance as a process of its own: lines on a pseudo-terminal or a TCP port, the hand
 * by words on standard input, in scaled wall time. Says {@code ready LINK} once it runs, then
 * {@code ok} or {@code refused: why} for each act; ends with its standard input or at {@code quit}.
 */
public final class PracticeServer {

  private final ServerOptions options;
  private final Outlet outlet;
  private final PracticeBalance balance;
  private final Pacer pacer;
  private volatile boolean stopped;

  private PracticeServer(ServerOptions options, Outlet outlet) {
    Timebase wall = Timebase.system();
    VirtualTime time = new VirtualTime(wall.instant());
    this.options = options;
    this.outlet = outlet;
    this.balance = new PracticeBalance(options.seed(), options.room(), options.format(), time);
    this.pacer = Pacer.of(wall, time, options.speed());
  }

  /** Runs until standard input ends. */
  public static void main(String[] args) throws IOException {
    try {
      serve(ServerOptions.parse(args), System.in, System.out);
    } catch (IllegalArgumentException e) {
      System.err.println(e.getMessage());
      System.exit(2);
    }
  }

  private static void serve(ServerOptions options, InputStream hand, PrintStream out)
      throws IOException {
    try (Outlet outlet = outlet(options)) {
      PracticeServer server = new PracticeServer(options, outlet);
      ExecutorService hands = Executors.newSingleThreadExecutor(PracticeServer::daemon);
      hands.execute(() -> server.obey(hand, out));
      hands.shutdown();
      out.println("ready " + outlet.linkText());
      out.flush();
      server.run();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "practice hand");
    thread.setDaemon(true);
    return thread;
  }

  private static Outlet outlet(ServerOptions options) throws IOException {
    Path pty = options.pty();
    return pty == null ? new TcpOutlet(options.tcp()) : new PtyOutlet(pty);
  }

  private void run() throws IOException, InterruptedException {
    while (!stopped) {
      pacer.await(balance.dueNanos(), () -> stopped);
      boolean wanted =
          switch (options.talks()) {
            case BY_ITSELF -> true;
            case ON_KEY -> balance.takeKeyPress();
            case WHEN_ASKED -> outlet.wasAsked();
          };
      byte[] line = balance.nextLine();
      if (wanted) {
        outlet.send(line);
      }
    }
  }

  private void obey(InputStream in, PrintStream out) {
    HandCommands commands = new HandCommands(balance, new PracticeTruth(options.seed()));
    try (BufferedReader lines = new BufferedReader(new InputStreamReader(in, UTF_8))) {
      String line = lines.readLine();
      for (; line != null && !line.strip().equals("quit"); line = lines.readLine()) {
        out.println(answer(commands, line));
        out.flush();
      }
    } catch (IOException e) {
      out.println("refused: " + e.getMessage());
    } finally {
      stopped = true;
    }
  }

  private static String answer(HandCommands commands, String line) {
    try {
      commands.run(line);
      return "ok";
    } catch (IllegalArgumentException e) {
      return "refused: " + e.getMessage();
    }
  }
}
