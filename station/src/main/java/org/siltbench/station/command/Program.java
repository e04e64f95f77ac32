package org.siltbench.station.command;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.siltbench.station.Problem;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Finds the command that was called, fills it, runs it, and answers the exit status. */
public final class Program {

  private static final int WRONG_USE = 2;

  private final Surroundings around;

  public Program(Surroundings around) {
    this.around = around;
  }

  /** Runs one command line. */
  public int run(String... args) {
    List<String> words = List.of(args);
    String first = words.isEmpty() ? "" : words.get(0);
    if (first.equals("--help") || first.equals("-h") || first.equals("help")) {
      return help(around.commands());
    }
    Optional<CommandEntry> called =
        find(first.startsWith("-") || words.isEmpty() ? List.of("window") : words);
    if (called.isPresent() && words.isEmpty()) {
      return run(called.get().make().get(), new CommonOptions()); // nothing to parse: seen sooner
    }
    if (called.isPresent()) {
      int used =
          first.startsWith("-") ? 0 : called.get().path().size(); // options alone: the window
      return run(called.get(), words.subList(used, words.size()));
    }
    return notFound(words);
  }

  /** The picocli model of one command, with the common options; for help and for its tests. */
  static CommandLine model(CommandEntry entry, Task task, CommonOptions options) {
    CommandLine line = new CommandLine(CommandSpec.forAnnotatedObjectLenient(task));
    line.setCommandName("siltbench " + entry.words());
    line.addMixin("common", options);
    line.getCommandSpec().usageMessage().description(entry.summary());
    return line;
  }

  private int run(CommandEntry entry, List<String> args) {
    Task task = entry.make().get();
    CommonOptions options = new CommonOptions();
    CommandLine line = model(entry, task, options);
    try {
      line.parseArgs(args.toArray(new String[0]));
    } catch (ParameterException e) {
      around.console().message(wording(e));
      around.console().message("siltbench " + entry.words() + " --help shows what it takes.");
      return WRONG_USE;
    }
    if (options.help) {
      around.console().fact(line.getUsageMessage().stripTrailing());
      return 0;
    }
    return run(task, options);
  }

  private int run(Task task, CommonOptions options) {
    Session session = new Session(around, options);
    Failures failures = new Failures(session);
    int status;
    try {
      status = task.run(session);
    } catch (Problem e) {
      status = failures.tell(e);
    } catch (IOException e) {
      status = failures.outside(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      status = failures.interrupted();
    } catch (RuntimeException | LinkageError e) {
      status = failures.unexpected(e);
    }
    return Math.max(status, close(session, failures));
  }

  private static int close(Session session, Failures failures) {
    try {
      session.close();
      return 0;
    } catch (Problem e) {
      return failures.tell(e);
    } catch (RuntimeException e) {
      return failures.unexpected(e);
    }
  }

  private Optional<CommandEntry> find(List<String> words) {
    return around.commands().stream()
        .filter(
            entry ->
                entry.path().size() <= words.size()
                    && entry.path().equals(words.subList(0, entry.path().size())))
        .max((a, b) -> Integer.compare(a.path().size(), b.path().size()));
  }

  private int notFound(List<String> words) {
    if (words.isEmpty()) {
      around.console().message("This copy has no window. All the work can be done by commands:");
      around.console().message("siltbench --help lists them.");
      return WRONG_USE;
    }
    List<CommandEntry> group =
        around.commands().stream().filter(e -> e.group().equals(words.get(0))).toList();
    if (group.isEmpty()) {
      around.console().message("\"" + shown(words.get(0)) + "\" is not a command of siltbench.");
      around.console().message("siltbench --help lists them.");
      return WRONG_USE;
    }
    boolean asked = words.size() == 2 && (words.contains("--help") || words.contains("-h"));
    if (!asked) {
      around.console().message("Say which: ");
      list(group).forEach(around.console()::message);
      return WRONG_USE;
    }
    return help(group);
  }

  private static String shown(String word) {
    return word.length() > 40 ? word.substring(0, 40) + "…" : word;
  }

  private static String wording(ParameterException e) {
    String text = String.valueOf(e.getMessage());
    return text.endsWith(".") || text.endsWith("?") ? text : text + '.';
  }

  private int help(List<CommandEntry> entries) {
    around.console().fact("siltbench: a weighing bench for suspended sediment on filters");
    around.console().fact("");
    list(entries).forEach(around.console()::fact);
    around.console().fact("");
    around.console().fact("siltbench COMMAND --help shows what a command takes.");
    return 0;
  }

  private static List<String> list(List<CommandEntry> entries) {
    List<String> lines = new ArrayList<>();
    for (CommandEntry entry : entries) {
      lines.add(String.format("  %-20s %s", entry.words(), entry.summary()));
    }
    return lines;
  }
}
