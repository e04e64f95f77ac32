package org.siltbench.balance.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.siltbench.balance.format.LineFormat.Talk.How;
import org.siltbench.balance.format.Terminator;
import org.siltbench.calc.reason.Reason;

/**
 * Tells from when lines came, with nobody asking, whether a balance talks by itself or on its key.
 * One that talks by itself is never silent for much longer than its own beat; a key gives single
 * lines with silence of any length between.
 */
final class Manner {

  private static final int MANY_LINES = 10;
  private static final int FEWEST_BEATS = 3;
  private static final double UNEVEN = 1.8;
  private static final long SHORTEST_PRESS = 400_000_000L;
  private static final long LONGEST_PAUSE = 1_000_000_000L;

  private final List<Long> beats = new ArrayList<>();
  private long silence;
  private int bursts;
  private int lines;

  private Manner(List<Sample> samples) {
    Terminator ends = LineEnds.find(samples).orElse(Terminator.ANY);
    samples.stream()
        .filter(s -> !s.pace().starts().isEmpty())
        .forEach(s -> take(s.pace(), LineEnds.cut(s, ends).size()));
    beats.sort(null);
  }

  /** How the balance of these samples talks; nothing if that cannot be told. */
  static Optional<How> of(List<Sample> samples) {
    return new Manner(samples).how(samples.size());
  }

  /** What was found. */
  static Reason words(How how) {
    return switch (how) {
      case BY_ITSELF -> LearnSays.BY_ITSELF.with();
      case ON_KEY -> LearnSays.ON_KEY.with();
      case WHEN_ASKED -> LearnSays.WHEN_ASKED.with();
    };
  }

  private void take(Pace pace, int wholeLines) {
    List<Long> starts = pace.starts();
    lines += wholeLines;
    bursts += starts.size();
    for (int i = 1; i < starts.size(); i++) {
      beats.add(starts.get(i) - starts.get(i - 1));
    }
    silence = Math.max(silence, Math.max(starts.get(0), pace.listened() - pace.lastHeard()));
  }

  private Optional<How> how(int samples) {
    boolean many = lines >= MANY_LINES * samples;
    if (beats.isEmpty()) {
      return many && silence <= LONGEST_PAUSE ? Optional.of(How.BY_ITSELF) : Optional.empty();
    }
    long middle = beats.get(beats.size() / 2);
    long longest = Math.max(silence, beats.get(beats.size() - 1));
    if (longest <= UNEVEN * middle && beats.size() >= FEWEST_BEATS) {
      return Optional.of(How.BY_ITSELF);
    }
    if (lines <= bursts && beats.get(0) >= SHORTEST_PRESS && longest > UNEVEN * middle) {
      return Optional.of(How.ON_KEY);
    }
    return many && longest <= LONGEST_PAUSE ? Optional.of(How.BY_ITSELF) : Optional.empty();
  }
}
