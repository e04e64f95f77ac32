package org.siltbench.station.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.siltbench.balance.BalanceException;
import org.siltbench.station.Problem;

/** Tells the person how a command failed: what happened, what is safe, what to do next. */
final class Failures {

  private static final int OUTSIDE = 3;

  private final Session session;

  Failures(Session session) {
    this.session = session;
  }

  int tell(Problem problem) {
    say(problem.what(), problem.safe(), problem.next());
    return problem.exitStatus();
  }

  int outside(IOException e) {
    if (e instanceof BalanceException balance) {
      say(String.valueOf(e.getMessage()), "What was announced is recorded.", balance.next());
      return OUTSIDE;
    }
    say("Something outside failed: " + reason(e), "What was announced is recorded.", "");
    return OUTSIDE;
  }

  int interrupted() {
    say("Stopped before the end.", "What was announced is recorded.", "Start it again to go on.");
    return OUTSIDE;
  }

  int unexpected(Throwable e) {
    String where =
        keep(e).map(file -> "The details are in " + file + '.').orElse("The details: " + trace(e));
    say(
        "Siltbench met something it did not expect (" + reason(e) + ").",
        "What was announced is recorded; siltbench verify proves it.",
        where);
    return OUTSIDE;
  }

  private void say(String what, String safe, String next) {
    if (session.events()) {
      Map<String, String> event = new LinkedHashMap<>();
      event.put("event", "problem");
      event.put("what", what);
      event.put("safe", safe);
      event.put("next", next);
      session.console().event(event);
      return;
    }
    for (String part : new String[] {what, safe, next}) {
      if (!part.isEmpty()) {
        session.message(part);
      }
    }
  }

  private static String reason(Throwable e) {
    String text = e.getMessage();
    String name = e.getClass().getSimpleName();
    return text == null || text.isEmpty() ? name : name + ": " + text;
  }

  private Optional<Path> keep(Throwable e) {
    Path lab = session.labFolder();
    try {
      Path file =
          Files.isDirectory(lab)
              ? Files.createTempFile(
                  Files.createDirectories(lab.resolve("log")), "failure-", ".txt")
              : Files.createTempFile("siltbench-failure-", ".txt");
      return Optional.of(Files.writeString(file, session.clock().instant() + "\n" + trace(e)));
    } catch (IOException notKept) {
      e.addSuppressed(notKept);
      return Optional.empty();
    }
  }

  private static String trace(Throwable e) {
    StringWriter text = new StringWriter();
    e.printStackTrace(new PrintWriter(text));
    return text.toString();
  }
}
