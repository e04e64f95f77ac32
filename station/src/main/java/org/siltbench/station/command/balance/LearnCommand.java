package org.siltbench.station.command.balance;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.format.FormatShelf;
import org.siltbench.balance.format.Visible;
import org.siltbench.balance.learn.Learned;
import org.siltbench.balance.learn.Situation;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import org.siltbench.station.work.connect.FormatLesson;
import org.siltbench.station.work.connect.LessonWords;
import picocli.CommandLine.Option;

/** {@code balance learn}. */
final class LearnCommand implements Task {

  @Option(
      names = "--balance",
      required = true,
      paramLabel = "SPEC",
      description = "a live balance, typed, or replay:FILE of captured lines")
  private String spec = "";

  @Option(names = "--save", paramLabel = "NAME", description = "save the format under this name")
  private @Nullable String save;

  @Option(names = "--yes", description = "ask nothing; take what the lines tell")
  private boolean yes;

  @Option(
      names = "--for",
      paramLabel = "SPAN",
      description = "how long to listen each time; default: ${DEFAULT-VALUE}")
  private String span = "8s";

  private static final int MOST_TYPED = 1000;

  private boolean justFound;

  @Override
  public int run(Session session) throws IOException, InterruptedException {
    if (save != null) {
      requireName(save);
    }
    LinkSpec link = Spec.parse(spec);
    if (link instanceof LinkSpec.Typed) {
      return tell(session, named(FormatLesson.learnTyped(link, typed(session))), link);
    }
    try (FormatLesson lesson = begin(session, link)) {
      if (lesson.recorded() || yes) {
        lesson.listen(Situation.UNKNOWN, Times.span(span));
      } else {
        ask(session, lesson, Times.span(span));
      }
      return tell(session, named(lesson.learn()), link);
    } catch (IllegalArgumentException e) {
      throw Spec.wrong(e);
    }
  }

  private Learned named(Learned learned) {
    return save == null ? learned : learned.named(save);
  }

  /** The lines that the balance types into standard input, up to the word done or its end. */
  private static List<String> typed(Session session) throws IOException {
    session.message("Keep the cursor here and press the balance's key: three times with the");
    session.message("empty pan, three times with a load, then with another one. Then type done.");
    List<String> lines = new ArrayList<>();
    String line = session.console().readLine();
    while (line != null && lines.size() < MOST_TYPED && !line.strip().equals("done")) {
      if (!line.isBlank()) {
        lines.add(line);
      }
      line = session.console().readLine();
    }
    return lines;
  }

  static void requireName(String name) {
    if (!FormatShelf.isName(name)) {
      throw new Problem.WrongUse(
          "A format's name has letters, digits, dash, dot and underscore.", "Change --save.");
    }
  }

  /** Learns from a balance just found, asking nothing, and saves. */
  static int learnAndSave(Session session, LinkSpec link, String name)
      throws IOException, InterruptedException {
    LearnCommand command = new LearnCommand();
    command.spec = link.toString();
    command.save = name;
    command.yes = true;
    command.justFound = true;
    return command.run(session);
  }

  private FormatLesson begin(Session session, LinkSpec link)
      throws IOException, InterruptedException {
    Balances balances = new Balances(Timebase.system(), formats(session));
    return justFound
        ? FormatLesson.beginAgain(link, balances::link, text -> show(session, text))
        : FormatLesson.begin(link, balances::link, text -> show(session, text));
  }

  private static Path formats(Session session) {
    return session.labFolder().resolve("formats");
  }

  private static void show(Session session, String text) {
    if (!session.json() && !session.events()) {
      session.message("  " + Visible.show(text));
    }
  }

  private static void ask(Session session, FormatLesson lesson, Duration each)
      throws IOException, InterruptedException {
    for (Situation situation : FormatLesson.SITUATIONS) {
      session.message(
          LessonWords.show(situation).replaceFirst("\\.$", "")
              + ", then press Enter; or type skip.");
      String answer = session.console().readLine();
      if (answer == null) {
        break;
      }
      lesson.listen(situation, each);
      if (answer.strip().equals("skip")) {
        lesson.forgetLast();
      }
    }
    if (lesson.isEmpty()) {
      lesson.listen(Situation.UNKNOWN, each);
    }
  }

  private int tell(Session session, Learned learned, LinkSpec link) throws IOException {
    LearnText text = new LearnText(session, learned);
    text.explain();
    boolean known = learned.format() != null;
    Path saved =
        known && save != null && mayBeSaved(session)
            ? FormatLesson.save(learned, save, formats(session))
            : null;
    text.document(saved);
    if (!known) {
      session.message("No format is safe enough yet. Nothing was saved.");
      return 1;
    }
    if (saved != null && save != null) {
      session.message("Saved in " + saved + '.');
      session.message("Weigh with: --balance '" + FormatLesson.with(link, save) + "'");
    }
    return 0;
  }

  private boolean mayBeSaved(Session session) throws IOException {
    if (yes) {
      return true;
    }
    session.message("Save it as " + save + "? Type yes.");
    String answer = session.console().readLine();
    return answer != null && answer.strip().equals("yes");
  }
}
