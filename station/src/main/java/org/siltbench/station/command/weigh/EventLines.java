package org.siltbench.station.command.weigh;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.stable.PanEvent;
import org.siltbench.station.command.Session;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Fields;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.weigh.Measured;
import org.siltbench.station.work.weigh.WeighEvent;

/** Tells what happens at the pan: a line for people, an object for programs. */
public final class EventLines implements Consumer<WeighEvent> {

  private final Session session;

  public EventLines(Session session) {
    this.session = session;
  }

  @Override
  public void accept(WeighEvent event) {
    if (event instanceof WeighEvent.Recorded recorded) {
      recorded(recorded);
    } else if (event instanceof WeighEvent.OnPan pan) {
      pan(pan.event());
    } else if (event instanceof WeighEvent.Place place) {
      tell("Place " + place.what().text() + ".", "place", "what", place.what().text());
    } else if (event instanceof WeighEvent.TakeOff) {
      tell("Take it off.", "take-off", "what", null);
    } else if (event instanceof WeighEvent.Declined declined) {
      tell(
          "Not recorded: " + declined.what() + ". " + declined.why().english(),
          "refused",
          "filter",
          declined.what(),
          "why",
          declined.why().english());
    } else if (event instanceof WeighEvent.Unasked unasked) {
      tell(
          unasked.digits() + " " + unasked.unit() + " lies on the pan, but nothing was asked for.",
          "unasked",
          "shown",
          unasked.digits() + " " + unasked.unit());
    } else if (event instanceof WeighEvent.Warned warned) {
      tell(warned.what().english(), "warning", "what", warned.what().english());
    } else {
      link(event);
    }
  }

  private void link(WeighEvent event) {
    if (event instanceof WeighEvent.LinkLost lost) {
      tell(
          "The balance is away: "
              + lost.why()
              + " What was announced is recorded. Plug the cable in again.",
          "link-lost",
          "why",
          lost.why());
    } else if (event instanceof WeighEvent.LinkBack back) {
      tell("The balance is back.", "link-back", "where", back.where());
    } else if (event instanceof WeighEvent.Silent silent) {
      tell(
          "Nothing readable from the balance for "
              + silent.since().toSeconds()
              + " s. Is it on, does it send, is the format right?",
          "silent",
          "seconds",
          Long.toString(silent.since().toSeconds()));
    } else if (event instanceof WeighEvent.Unreadable unreadable) {
      tell(
          "Not read: " + unreadable.raw() + " (" + unreadable.why() + ")",
          "unreadable",
          "raw",
          unreadable.raw(),
          "why",
          unreadable.why());
    }
  }

  private void pan(PanEvent event) {
    if (event instanceof PanEvent.Ready ready) {
      tell("", "ready", "zero_g", ready.zero().toGrams());
    } else if (event instanceof PanEvent.Rezero rezero) {
      tell(
          "The empty pan shows " + rezero.offset().toGrams() + " g. Set the balance to zero.",
          "rezero",
          "offset_g",
          rezero.offset().toGrams());
    } else if (event instanceof PanEvent.Hint hint) {
      tell(hint.text(), "hint", "text", hint.text());
    } else if (event instanceof PanEvent.Settling) {
      tell("", "settling", "what", null);
    } else if (event instanceof PanEvent.Provisional provisional) {
      tell("", "provisional", "digits", provisional.digits());
    } else if (event instanceof PanEvent.Withdrawn withdrawn) {
      tell("", "withdrawn", "why", withdrawn.why());
    } else if (event instanceof PanEvent.TakingUpMoisture moisture) {
      tell(
          "The filter takes up moisture.",
          "moisture",
          "mg_per_min",
          Double.toString(moisture.mgPerMin()));
    } else if (event instanceof PanEvent.OutOfRange range) {
      tell("Out of range: " + range.why(), "out-of-range", "why", range.why());
    }
  }

  private void recorded(WeighEvent.Recorded recorded) {
    Map<String, @Nullable Object> event = new LinkedHashMap<>();
    event.put("event", "recorded");
    Fields data = Fields.of(recorded.entry());
    String what = data.find("filter").orElse(data.text("weight"));
    data.find("filter").ifPresent(filter -> event.put("filter", filter));
    data.find("weight").ifPresent(weight -> event.put("weight", weight));
    data.find("purpose").ifPresent(purpose -> event.put("purpose", purpose));
    putMass(event, recorded.measured(), recorded.entry());
    String verdict = data.text("verdict");
    if (!verdict.isEmpty()) {
      event.put("verdict", verdict);
    }
    session.announce(
        "recorded "
            + what
            + " "
            + recorded.measured().grams()
            + " g"
            + (verdict.isEmpty() ? "" : " " + verdict),
        event);
  }

  /** The fields that every recorded mass has in JSON. */
  public static void putMass(Map<String, @Nullable Object> fields, Measured measured, Entry entry) {
    fields.put("mass_g", measured.grams());
    if (measured.uGrams() != null) {
      fields.put("u_g", measured.uGrams());
    }
    fields.put("time", Facts.time(entry.at()));
    Map<String, Object> ledger = new LinkedHashMap<>();
    ledger.put("bench", entry.ref().bench());
    ledger.put("seq", entry.ref().seq());
    fields.put("ledger", ledger);
  }

  private void tell(String line, String event, String field, @Nullable String value) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("event", event);
    if (value != null) {
      fields.put(field, value);
    }
    session.progress(line, fields);
  }

  private void tell(
      String line, String event, String field, String value, String other, String otherValue) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("event", event);
    fields.put(field, value);
    fields.put(other, otherValue);
    session.progress(line, fields);
  }
}
