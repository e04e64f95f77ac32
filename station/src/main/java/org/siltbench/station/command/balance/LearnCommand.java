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
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.format.LineFormat.Talk;
import org.siltbench.balance.format.MassUnit;
import org.siltbench.balance.format.Visible;
import org.siltbench.balance.learn.Hints;
import org.siltbench.balance.learn.Learned;
import org.siltbench.balance.learn.Learner;
import org.siltbench.balance.learn.Listener;
import org.siltbench.balance.learn.Sample;
import org.siltbench.balance.learn.Situation;
import org.siltbench.balance.link.Link;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.link.ReplayLink;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import picocli.CommandLine.Option;

/** {@code balance learn}. */
final class LearnCommand implements Task {

  private static final Duration WHOLE_FILE = Duration.ofDays(1);
  private static final long BY_ITSELF = 10;
  private static final List<Situation> SHOWN =
      List.of(Situation.EMPTY, Situation.LOAD, Situation.MOVING, Situation.OVER);

  @Option(
      names = "--balance",
      required = true,
      paramLabel = "SPEC",
      description = "a live balance, or replay:FILE of captured lines")
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

  @Override
  public int run(Session session) throws IOException, InterruptedException {
    if (save != null && !FormatShelf.isName(save)) {
      throw new Problem.WrongUse(
          "A format's name has letters, digits, dash, dot and underscore.", "Change --save.");
    }
    LinkSpec link = Spec.parse(spec);
    Path folder = session.labFolder().resolve("formats");
    try {
      Link opened = new Balances(Timebase.system(), folder).link(link);
      List<Sample> samples = capture(session, opened, link);
      Learned learned = Learner.learn(samples, hints(opened, link, samples));
      return tell(session, named(learned), new FormatShelf(folder));
    } catch (IllegalArgumentException e) {
      throw Spec.wrong(e);
    }
  }

  private static Hints hints(Link opened, LinkSpec link, List<Sample> samples) {
    String unit = link.options().unit();
    Talk talk = talk(link, samples);
    boolean text = opened instanceof ReplayLink replay && replay.isPlainText();
    return new Hints(unit == null ? null : MassUnit.ofSymbol(unit).orElse(null), talk, text);
  }

  /** Told by the balance text; or by many lines that came live though nobody asked. */
  private static @Nullable Talk talk(LinkSpec link, List<Sample> samples) {
    String ask = link.options().ask();
    if (ask != null && !ask.isEmpty()) {
      return new Talk(Talk.How.WHEN_ASKED, ask, "");
    }
    long ends = samples.stream().flatMapToInt(s -> s.text().chars()).filter(c -> c < ' ').count();
    boolean live = !(link instanceof LinkSpec.Replay);
    return live && ends >= BY_ITSELF * samples.size() ? Talk.BY_ITSELF : null;
  }

  private List<Sample> capture(Session session, Link link, LinkSpec named)
      throws IOException, InterruptedException {
    boolean recorded = named instanceof LinkSpec.Replay;
    Duration each = recorded ? WHOLE_FILE : Times.span(span);
    try (Listener listener = new Listener(link, named.options(), text -> show(session, text))) {
      if (recorded || yes) {
        return List.of(listener.listen(Situation.UNKNOWN, each));
      }
      return asked(session, listener, each);
    }
  }

  private void show(Session session, String text) {
    if (!session.json() && !session.events()) {
      session.message("  " + Visible.show(text));
    }
  }

  private static List<Sample> asked(Session session, Listener listener, Duration each)
      throws IOException, InterruptedException {
    List<Sample> out = new ArrayList<>();
    for (Situation situation : SHOWN) {
      session.message("Show " + situation.words() + ", then press Enter; or type skip.");
      String answer = session.console().readLine();
      if (answer == null) {
        break;
      }
      Sample between = listener.listen(situation, each);
      if (!answer.strip().equals("skip")) {
        out.add(between);
      }
    }
    return out.isEmpty() ? List.of(listener.listen(Situation.UNKNOWN, each)) : out;
  }

  private Learned named(Learned learned) {
    LineFormat format = learned.format();
    if (format == null || save == null) {
      return learned;
    }
    return new Learned(format.named(save), learned.findings(), learned.unknown(), learned.lines());
  }

  private int tell(Session session, Learned learned, FormatShelf shelf) throws IOException {
    LearnText text = new LearnText(session, learned);
    text.explain();
    LineFormat format = learned.format();
    Path saved = format != null && save != null && mayBeSaved(session) ? shelf.save(format) : null;
    text.document(saved);
    if (format == null) {
      session.message("No format is safe enough yet. Nothing was saved.");
      return 1;
    }
    if (saved != null) {
      session.message("Saved in " + saved + ". Use it with format=" + save + '.');
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
