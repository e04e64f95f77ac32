package org.siltbench.station.work.postweigh;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.balance.Reading;
import org.siltbench.balance.ReadingSource;
import org.siltbench.balance.SourceEvent;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.weigh.PanLoad;
import org.siltbench.station.work.weigh.WeighEvent;

/**
 * A balance of canned lines, and the hand that does what the bench asks: five readings a second.
 */
final class ScriptedPan implements ReadingSource, PostWeighRun.Listener {

  private static final long STEP = 200_000_000L;

  private final Map<String, String> masses = new HashMap<>();
  private final Map<String, Double> rising = new HashMap<>();
  final List<String> declined = new ArrayList<>();
  final List<String> hints = new ArrayList<>();
  final List<PostWeighReport.Done> recorded = new ArrayList<>();
  final List<String> asked = new ArrayList<>();
  final List<String> warned = new ArrayList<>();
  private String shown = "0.00000";
  private double rate;
  private long loadedAt;
  private long nanos;

  /** What the balance shows when this filter is placed, g. */
  ScriptedPan mass(String filter, String grams) {
    masses.put(filter, grams);
    rising.remove(filter);
    return this;
  }

  /** The same, gaining so many mg a minute. */
  ScriptedPan gaining(String filter, String grams, double mgPerMinute) {
    masses.put(filter, grams);
    rising.put(filter, mgPerMinute);
    return this;
  }

  @Override
  public SourceEvent next(Duration atMost) throws InterruptedException {
    if (Thread.interrupted()) {
      throw new InterruptedException();
    }
    nanos += STEP;
    double gained = rate / 1000 * (nanos - loadedAt) / 60e9;
    Mass mass = Mass.ofGrams(shown).plus(Mass.ofMilligrams(Math.round(gained * 1e5) / 100.0));
    String digits = mass.toGrams(5);
    return new SourceEvent.Read(
        new Reading(
            Reading.Kind.MASS,
            mass,
            digits,
            "g",
            Reading.Mark.NONE,
            digits + " g",
            nanos,
            Instant.ofEpochSecond(0, nanos)));
  }

  @Override
  public void accept(WeighEvent event) {
    if (event instanceof WeighEvent.Place place) {
      String what =
          place.what() instanceof PanLoad.OfFilter filter ? filter.id() : place.what().text();
      shown = masses.getOrDefault(what, "0.10000");
      rate = rising.getOrDefault(what, 0.0);
      loadedAt = nanos;
    } else if (event instanceof WeighEvent.TakeOff) {
      shown = "0.00000";
      rate = 0;
    } else if (event instanceof WeighEvent.Declined no) {
      declined.add(no.why().english());
    } else if (event instanceof WeighEvent.Warned warning) {
      warned.add(warning.what().english());
    }
  }

  @Override
  public void recorded(PostWeighReport.Done done) {
    recorded.add(done);
  }

  @Override
  public void hint(String filter, Words text) {
    hints.add(text.english());
  }

  /** What a person does between two runs: the pan is emptied. */
  void clear() {
    shown = "0.00000";
    rate = 0;
  }

  @Override
  public String describe() {
    return "canned lines";
  }

  @Override
  public String formatName() {
    return "canned";
  }

  @Override
  public void close() {}

  @Override
  public void askBag(String filter, String dish) {
    asked.add("bag " + filter + " " + dish);
  }
}
