package org.siltbench.station.window.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.Reading;
import org.siltbench.balance.SourceEvent;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.reason.Reason;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.strip.Face.Prompt;
import org.siltbench.station.window.strip.Face.State;
import org.siltbench.station.work.weigh.PanLoad;
import org.siltbench.station.work.weigh.WeighEvent;

/** What the strip says, reading by reading. */
class FaceFoldTest {

  private static final long STEP = 100_000_000L;

  private final FaceFold fold = new FaceFold();
  private long now;

  private void shows(String grams, int times) {
    for (int i = 0; i < times; i++) {
      now += STEP;
      fold.heard(
          new SourceEvent.Read(
              new Reading(
                  Reading.Kind.MASS,
                  Mass.ofGrams(grams),
                  grams,
                  "g",
                  Reading.Mark.NONE,
                  grams + " g",
                  now,
                  Instant.EPOCH)));
    }
  }

  private State state() {
    return fold.face().state();
  }

  @Test
  void an_idle_pan_is_watched_and_a_stable_mass_nobody_asked_for_is_only_stable() {
    assertEquals(State.NO_BALANCE, state());
    shows("0.00000", 60);
    assertEquals(State.READY, state());
    shows("0.12874", 3);
    assertEquals(State.SETTLING, state());
    shows("0.12874", 300);
    assertEquals(State.STABLE, state());
    assertEquals("0.12874", fold.face().digits());
  }

  @Test
  void a_pulled_cable_takes_the_digits_away_and_ready_comes_back_with_it() {
    shows("0.00000", 60);
    fold.heard(new SourceEvent.Lost(Reason.plain("unplugged"), now, Instant.EPOCH));
    assertEquals(State.AWAY, state());
    assertEquals("", fold.face().digits());
    fold.heard(new SourceEvent.Back("port", now, Instant.EPOCH));
    assertEquals(State.READY, state());
  }

  @Test
  void a_silent_balance_is_told_after_ten_seconds_and_goes_on_where_it_was() {
    shows("0.00000", 60);
    fold.heard(new SourceEvent.Quiet(now + 9_000_000_000L, Instant.EPOCH));
    assertEquals(State.READY, state());
    fold.heard(new SourceEvent.Quiet(now + 11_000_000_000L, Instant.EPOCH));
    assertEquals(State.SILENT, state());
    shows("0.00000", 1);
    assertEquals(State.READY, state());
  }

  @Test
  void a_line_that_cannot_be_read_is_never_a_mass() {
    shows("0.00000", 60);
    fold.heard(new SourceEvent.Unreadable("?? g", Reason.plain("no number"), now, Instant.EPOCH));
    assertEquals(State.UNREADABLE, state());
    assertEquals("", fold.face().digits());
  }

  @Test
  void while_a_run_has_the_pan_its_words_count() {
    shows("0.00000", 60);
    fold.ran(new WeighEvent.Place(PanLoad.OfFilter.in("K3DF0712R", "")));
    assertEquals(new Prompt(Prompt.Kind.PLACE, Words.verbatim("K3DF0712R")), fold.face().prompt());
    shows("0.12874", 200);
    assertEquals(State.READY, state());
    fold.ran(new WeighEvent.Declined("K3DF0712R", Words.verbatim("two filters"), null));
    assertEquals(State.REFUSED, state());
    fold.runOver();
    assertEquals(Prompt.NONE, fold.face().prompt());
  }

  @Test
  void the_trace_shows_the_band_only_around_a_mass_that_holds() {
    shows("0.00000", 60);
    assertEquals(Double.NaN, fold.trace().picture().low());
    shows("0.12874", 120);
    double middle = (fold.trace().picture().low() + fold.trace().picture().high()) / 2;
    assertEquals(0.5, middle, 1e-6);
  }
}
