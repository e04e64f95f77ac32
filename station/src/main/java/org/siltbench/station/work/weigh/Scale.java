package org.siltbench.station.work.weigh;

import java.io.IOException;
import java.util.function.Consumer;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.ReadingSource;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.practice.Load;
import org.siltbench.balance.practice.PracticeSource;
import org.siltbench.balance.practice.PracticeTruth;
import org.siltbench.balance.stable.HandsFreePan;
import org.siltbench.balance.stable.PanCycle;
import org.siltbench.balance.stable.PanSettings;
import org.siltbench.balance.stable.PressedPan;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.work.equip.BalanceRecord;

/**
 * An opened balance.
 *
 * @param pan its watched pan
 * @param name the name under which its weighings are recorded
 */
public record Scale(PanWatch pan, String name) implements AutoCloseable {

  /** Opens the readings behind a link. */
  public interface Opening {
    /** Opens them. */
    ReadingSource open(LinkSpec spec) throws IOException;
  }

  /**
   * Opens what a link text names. At the practice balance a simulated hand obeys the prompts.
   *
   * @throws Problem.WrongUse if the text names no link
   * @throws Problem.Refused if it is the practice balance and this is no practice lab
   * @throws Problem.Outside if it cannot be reached
   */
  public static Scale open(
      Bench bench,
      String spec,
      Opening opening,
      PanSettings settings,
      Patience patience,
      Consumer<WeighEvent> listener) {
    LinkSpec link = parse(spec);
    if (link instanceof LinkSpec.Practice && !bench.practice()) {
      throw noPractice();
    }
    String name = BalanceRecord.nameOf(bench.register(), link);
    ReadingSource source = open(link, opening);
    Consumer<WeighEvent> all = listener;
    if (source instanceof PracticeSource practice && link instanceof LinkSpec.Practice known) {
      PracticeTruth truth = new PracticeTruth(known.seed());
      all = listener.andThen(new PracticeHand(practice.hand(), id -> load(bench, truth, id)));
    }
    return new Scale(
        new PanWatch(source, cycle(source, settings), patient(source, patience), all), name);
  }

  private static PanCycle cycle(ReadingSource source, PanSettings settings) {
    return source.singly() ? new PressedPan(settings) : new HandsFreePan(settings);
  }

  /** Between two presses a balance is silent, and nobody needs to be told. */
  private static Patience patient(ReadingSource source, Patience patience) {
    return source.singly() ? new Patience(patience.giveUp(), patience.giveUp()) : patience;
  }

  /** Reads a link text. */
  public static LinkSpec parse(String spec) {
    try {
      return LinkSpec.parse(spec);
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(WeighSays.NO_SPEC, Elsewhere.words(e));
    }
  }

  private static ReadingSource open(LinkSpec link, Opening opening) {
    try {
      return opening.open(link);
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(WeighSays.SPEC_UNUSABLE, Elsewhere.words(e));
    } catch (BalanceException e) {
      throw new Problem.Outside(
          e, WeighSays.NOT_OPENED, Elsewhere.words(e), Elsewhere.words(e.wayOut()));
    } catch (IOException e) {
      throw new Problem.Outside(e, WeighSays.UNREACHABLE, Elsewhere.words(e));
    }
  }

  private static Load load(Bench bench, PracticeTruth truth, String id) {
    String status =
        Filters.find(bench.register(), id).map(FilterState::status).map(s -> s.code()).orElse("");
    return Load.of(truth.of(id, status));
  }

  /** Why the practice balance is refused. */
  public static Problem.Refused noPractice() {
    return new Problem.Refused(WeighSays.PRACTICE_ONLY);
  }

  @Override
  public void close() {
    pan.close();
  }
}
