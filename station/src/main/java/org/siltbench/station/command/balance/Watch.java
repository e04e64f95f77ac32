package org.siltbench.station.command.balance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.balance.ReadingSource;
import org.siltbench.balance.SourceEvent;
import org.siltbench.station.command.Session;

/** What one watch saw. */
final class Watch {

  private static final int MOST_KEPT = 100_000;

  private final Session session;
  private final List<Map<String, @Nullable Object>> kept = new ArrayList<>();
  private int readings;
  private int unreadable;
  private int losses;
  private boolean started;
  private boolean ended;
  private long first;
  private long last;

  Watch(Session session) {
    this.session = session;
  }

  int readings() {
    return readings;
  }

  boolean isOver(int count, long longestNanos) {
    return ended || (count > 0 && readings >= count) || (started && last - first >= longestNanos);
  }

  void take(SourceEvent event) {
    if (event instanceof SourceEvent.Read read) {
      time(read.reading().nanos());
      reading(read.reading());
    } else if (event instanceof SourceEvent.Unreadable line) {
      time(line.nanos());
      unreadable++;
      tell(
          "Not read: " + line.raw() + " (" + line.why() + ")",
          "unreadable",
          line.why(),
          line.raw());
    } else if (event instanceof SourceEvent.Lost lost) {
      time(lost.nanos());
      losses++;
      tell(
          "The balance is away: " + lost.why() + " Plug it in again.", "link-lost", lost.why(), "");
    } else {
      rest(event);
    }
  }

  private void rest(SourceEvent event) {
    if (event instanceof SourceEvent.Back back) {
      time(back.nanos());
      tell("The balance is back at " + back.where() + ".", "link-back", back.where(), "");
    } else if (event instanceof SourceEvent.Quiet quiet) {
      time(quiet.nanos());
    } else if (event instanceof SourceEvent.Ended end) {
      time(end.nanos());
      ended = true;
    }
  }

  private void time(long nanos) {
    first = started ? first : nanos;
    started = true;
    last = nanos;
  }

  private void reading(Reading reading) {
    readings++;
    Map<String, @Nullable Object> fields = Digits.fields(reading.raw(), reading);
    fields.put("kind", reading.kind().name().toLowerCase(java.util.Locale.ROOT));
    fields.put("time", reading.at().toString());
    if (session.json() && kept.size() < MOST_KEPT) {
      kept.add(fields);
    }
    if (session.events()) {
      Map<String, @Nullable Object> event = new LinkedHashMap<>();
      event.put("event", "reading");
      event.putAll(fields);
      session.console().event(event);
    }
    session.fact(line(reading));
  }

  private static String line(Reading reading) {
    return switch (reading.kind()) {
      case MASS -> reading.digits() + " " + reading.unit() + mark(reading.mark());
      case OVER -> "over range";
      case UNDER -> "under range";
      case FAULT -> "the balance reports a fault: " + reading.raw();
    };
  }

  private static String mark(Reading.Mark mark) {
    return switch (mark) {
      case STABLE -> "  stable";
      case MOVING -> "  moving";
      case NONE -> "";
    };
  }

  private void tell(String line, String event, String why, String raw) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("event", event);
    fields.put("why", why);
    if (!raw.isEmpty()) {
      fields.put("raw", raw);
    }
    session.progress(line, fields);
  }

  void tell(ReadingSource source) {
    Map<String, @Nullable Object> document = new LinkedHashMap<>();
    document.put("balance", source.describe());
    document.put("format", source.formatName());
    document.put("readings", kept);
    document.put("unreadable", unreadable);
    document.put("lost", losses);
    session.document(document);
  }
}
