package org.siltbench.station.work.connect;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.format.FormatShelf;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.format.LineFormat.Talk;
import org.siltbench.balance.format.MassUnit;
import org.siltbench.balance.learn.Hints;
import org.siltbench.balance.learn.Learned;
import org.siltbench.balance.learn.Learner;
import org.siltbench.balance.learn.Listener;
import org.siltbench.balance.learn.Sample;
import org.siltbench.balance.learn.Situation;
import org.siltbench.balance.link.Link;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.link.ReplayLink;

/**
 * Learns the line format of one balance from what it sends, situation by situation. {@link #listen}
 * blocks; {@link #cancel} may come from any thread. Nothing is saved until {@link #save}.
 */
public final class FormatLesson implements AutoCloseable {

  /** The situations to show, in this order; each may be skipped. */
  public static final List<Situation> SITUATIONS =
      List.of(Situation.EMPTY, Situation.LOAD, Situation.MOVING, Situation.OVER);

  private static final Duration WHOLE_FILE = Duration.ofDays(1);
  private static final Duration BETWEEN_TRIES = Duration.ofMillis(100);
  private static final int MOST_TRIES = 20;

  private final LinkSpec spec;
  private final Link link;
  private final Listener listener;
  private final List<Sample> samples = new ArrayList<>();
  private volatile boolean cancelled;

  private FormatLesson(LinkSpec spec, Link link, Consumer<String> eye) throws IOException {
    this.spec = spec;
    this.link = link;
    this.listener = new Listener(link, spec.options(), eye);
  }

  /** Makes a link of a link text. */
  public interface Opener {
    /** The link, not yet connected. */
    Link link(LinkSpec spec) throws IOException;
  }

  /**
   * Connects.
   *
   * @param eye sees the bytes as they come, one character each, on the thread that listens
   * @throws BalanceException if it cannot be reached
   */
  public static FormatLesson begin(LinkSpec spec, Opener opener, Consumer<String> eye)
      throws IOException {
    return new FormatLesson(spec, opener.link(spec), eye);
  }

  /**
   * Connects to a balance that was listened to a moment ago: a port just closed may be away, or
   * still held, for a moment.
   *
   * @throws BalanceException if it cannot be reached for two seconds
   */
  public static FormatLesson beginAgain(LinkSpec spec, Opener opener, Consumer<String> eye)
      throws IOException, InterruptedException {
    for (int left = MOST_TRIES; left > 1; left--) {
      try {
        return begin(spec, opener, eye);
      } catch (BalanceException notYet) {
        Thread.sleep(BETWEEN_TRIES.toMillis()); // the last try below tells why
      }
    }
    return begin(spec, opener, eye);
  }

  /** True if the lines come from a file: they are taken whole, and nobody has to show anything. */
  public boolean recorded() {
    return spec instanceof LinkSpec.Replay;
  }

  /** Listens for so long, or to the end of a file, and keeps what came. */
  public Sample listen(Situation situation, Duration time)
      throws IOException, InterruptedException {
    return listen(situation, time, done -> {});
  }

  /**
   * The same, telling how far it is.
   *
   * @param progress hears a part of 1 several times a second, on the thread that listens
   */
  public Sample listen(Situation situation, Duration time, DoubleConsumer progress)
      throws IOException, InterruptedException {
    Duration span = recorded() ? WHOLE_FILE : time;
    long began = link.time().nanos();
    Sample heard =
        listener.listen(
            situation,
            span,
            () -> {
              double part = (double) (link.time().nanos() - began) / span.toNanos();
              progress.accept(Math.min(1, part));
              return cancelled;
            });
    samples.add(heard);
    return heard;
  }

  /** Forgets the newest sample: the person did not show what was asked. */
  public void forgetLast() {
    if (!samples.isEmpty()) {
      samples.remove(samples.size() - 1);
    }
  }

  /** True if nothing has been kept yet. */
  public boolean isEmpty() {
    return samples.isEmpty();
  }

  /** What can be told from all that was kept. */
  public Learned learn() {
    boolean text = link instanceof ReplayLink replay && replay.isPlainText();
    return Learner.learn(samples, hints(spec, text));
  }

  private static Hints hints(LinkSpec spec, boolean text) {
    String ask = spec.options().ask();
    Talk talk = ask == null || ask.isEmpty() ? null : new Talk(Talk.How.WHEN_ASKED, ask, "");
    return new Hints(unit(spec), talk, text);
  }

  private static @Nullable MassUnit unit(LinkSpec spec) {
    String unit = spec.options().unit();
    return unit == null ? null : MassUnit.ofSymbol(unit).orElse(null);
  }

  /** What can be told from whole lines that a balance typed, each on a press of its key. */
  public static Learned learnTyped(LinkSpec spec, List<String> lines) {
    StringBuilder text = new StringBuilder();
    lines.forEach(line -> text.append(new String(bytes(line), ISO_8859_1)).append('\n'));
    Sample typed = new Sample(Situation.UNKNOWN, text.toString(), true);
    Talk talk = new Talk(Talk.How.ON_KEY, "", "");
    return Learner.learn(List.of(typed), new Hints(unit(spec), talk, true));
  }

  private static byte[] bytes(String line) {
    return line.getBytes(ISO_8859_1);
  }

  /**
   * Saves the format under a name.
   *
   * @param formats the folder of saved formats
   * @throws IllegalArgumentException if nothing was learned, or the name is none
   */
  public static Path save(Learned learned, String name, Path formats) throws IOException {
    LineFormat format = learned.format();
    if (format == null) {
      throw new IllegalArgumentException("There is no format to save.");
    }
    return new FormatShelf(formats).save(format.named(name));
  }

  /** The text that names this balance with the saved format. */
  public static LinkSpec with(LinkSpec spec, String name) {
    return spec.with(spec.options().withFormat(name));
  }

  /** Stops the listening soon; what came so far is kept. */
  public void cancel() {
    cancelled = true;
  }

  @Override
  public void close() throws IOException {
    listener.close();
  }
}
