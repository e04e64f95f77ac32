package org.siltbench.balance;

import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.format.FormatShelf;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.format.MassUnit;
import org.siltbench.balance.format.Terminator;
import org.siltbench.balance.link.Link;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.link.ReplayLink;
import org.siltbench.balance.link.SerialLink;
import org.siltbench.balance.link.SpecOptions;
import org.siltbench.balance.link.SpecSays;
import org.siltbench.balance.link.TcpLink;
import org.siltbench.balance.practice.Practice;
import org.siltbench.balance.practice.PracticeLink;
import org.siltbench.balance.practice.PracticeSetup;
import org.siltbench.balance.practice.PracticeSource;
import org.siltbench.calc.reason.Unfit;

/** The way in: from a link text to running readings. */
public final class Balances {

  private final Timebase time;
  private final FormatShelf formats;
  private final Tap tap;

  /**
   * Balances on the given clock.
   *
   * @param formats the folder where saved line formats lie; it need not exist
   */
  public Balances(Timebase time, Path formats) {
    this(time, new FormatShelf(formats), Tap.NONE);
  }

  private Balances(Timebase time, FormatShelf formats, Tap tap) {
    this.time = time;
    this.formats = formats;
    this.tap = tap;
  }

  /** The same, with somebody watching the bytes: a recording, or the eye. */
  public Balances tappedBy(Tap watcher) {
    return new Balances(time, formats, watcher);
  }

  /**
   * Opens what a link text names. For {@link LinkSpec.Practice} the source is a {@link
   * PracticeSource}, which has the hand and the simulated clock.
   *
   * @throws BalanceException if it cannot be reached, with a message for the person
   * @throws IllegalArgumentException if its format or unit cannot be used, with a message
   */
  public ReadingSource open(LinkSpec spec) throws IOException {
    LineFormat format = format(spec.options());
    if (spec instanceof LinkSpec.Practice p) {
      return practice(PracticeSetup.seeded(p.seed()), format, p.options().speed());
    }
    if (spec instanceof LinkSpec.Typed) {
      return new TypedReadings(format, time);
    }
    Link link = link(spec);
    return new LineSource(link, framed(link, format), asker(format, spec.options()), tap);
  }

  /** Opens a practice balance in this process with its room, way and clock chosen. */
  public PracticeSource practice(PracticeSetup setup) throws IOException {
    return practice(setup, LineFormat.standard(), null);
  }

  /** The bare link of a link text, for one who wants its bytes. */
  public Link link(LinkSpec spec) throws IOException {
    if (spec instanceof LinkSpec.Serial s) {
      return new SerialLink(s, time);
    } else if (spec instanceof LinkSpec.Tcp t) {
      return new TcpLink(t, time);
    } else if (spec instanceof LinkSpec.Replay r) {
      return new ReplayLink(r, time);
    }
    if (!(spec instanceof LinkSpec.Practice p)) {
      throw new BalanceException(BalanceSays.TYPED_NO_PORT.with(), BalanceSays.LET_IT_TYPE.with());
    }
    PracticeSetup setup = PracticeSetup.seeded(p.seed());
    return Practice.link(setup, format(p.options()), time, p.options().speed());
  }

  @SuppressWarnings("resource") // the practice source owns the readings and closes them
  private PracticeSource practice(PracticeSetup setup, LineFormat format, @Nullable Double speed)
      throws IOException {
    PracticeLink link = Practice.link(setup, format, time, speed);
    return new PracticeSource(new LineSource(link, format, null, tap), link.hand(), link.time());
  }

  private LineFormat format(SpecOptions options) throws IOException {
    String name = options.format();
    LineFormat format = name == null ? LineFormat.standard() : formats.load(name);
    String unit = options.unit();
    return unit == null ? format : format.expecting(unit(unit));
  }

  private static MassUnit unit(String text) {
    return MassUnit.ofSymbol(text).orElseThrow(() -> new Unfit(SpecSays.UNIT, text));
  }

  /** Plain text files end their lines in their own way. */
  private static LineFormat framed(Link link, LineFormat format) {
    boolean textual = format.ends().text().matches("[\r\n]*");
    boolean plain = link instanceof ReplayLink r && r.isPlainText();
    return plain && textual ? format.endingWith(Terminator.ANY) : format;
  }

  private static @Nullable Asker asker(LineFormat format, SpecOptions options) {
    String ask = options.ask();
    if (ask == null) {
      refuseSilence(format);
      return null;
    }
    String text = ask.isEmpty() ? format.talk().ask() : ask;
    if (text.isEmpty()) {
      throw new Unfit(SpecSays.ASK_TEXT);
    }
    return new Asker(text, options.every());
  }

  private static void refuseSilence(LineFormat format) {
    if (format.talk().how() == LineFormat.Talk.How.WHEN_ASKED) {
      throw new Unfit(SpecSays.ASKED_ONLY, format.name());
    }
  }
}
