package org.siltbench.station.command.people;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.people.Right;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code people add}. */
final class PeopleAdd implements Task {

  @Parameters(index = "0", paramLabel = "INITIALS", description = "the person's initials")
  private String initials = "";

  @Option(
      names = "--right",
      paramLabel = "RIGHT",
      description = "read, weigh or supervise; default: weigh")
  private String right = "weigh";

  @Option(
      names = "--new-pin-file",
      paramLabel = "FILE",
      description = "file with the person's PIN; else SILTBENCH_NEW_PIN, else it is asked twice")
  @Nullable Path pinFile;

  @Option(
      names = "--badge",
      paramLabel = "TEXT",
      description = "what a scanner reads from the person's badge")
  private String badge = "";

  @Override
  public int run(Session session) throws IOException {
    Right wanted = right();
    session.supervisor();
    char[] pin = pin(session);
    try {
      session.people().put(initials, wanted, pin, badge);
    } finally {
      Arrays.fill(pin, '\0');
    }
    session.fact(initials + " may " + wanted.code() + '.');
    session.document(Map.of("initials", initials, "right", wanted.code()));
    return 0;
  }

  private Right right() {
    try {
      return Right.of(right);
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(
          "\"" + right + "\" is no right.", "Give --right read, weigh or supervise.");
    }
  }

  private char[] pin(Session session) throws IOException {
    if (pinFile != null) {
      try (var lines = Files.lines(pinFile, StandardCharsets.UTF_8)) {
        return lines.findFirst().orElse("").strip().toCharArray();
      }
    }
    return session
        .variable("SILTBENCH_NEW_PIN")
        .map(String::toCharArray)
        .orElseGet(() -> asked(session));
  }

  private static char[] asked(Session session) {
    char[] once = session.console().secret("New PIN: ").orElseThrow(PeopleAdd::none);
    char[] again = session.console().secret("The same again: ").orElseThrow(PeopleAdd::none);
    if (!Arrays.equals(once, again)) {
      throw new Problem.WrongUse("The two PINs differ.", "Nothing was changed. Try again.");
    }
    return once;
  }

  private static Problem.WrongUse none() {
    return new Problem.WrongUse(
        "There is no PIN.", "Give --new-pin-file FILE or the variable SILTBENCH_NEW_PIN.");
  }
}
