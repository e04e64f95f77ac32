package org.siltbench.station.work.equip;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.life.Fields;
import org.siltbench.station.register.RegisterView;

/** What has been noted of the room. */
public final class RoomLog {

  private RoomLog() {}

  /** One note; figures as they were noted, empty where none was. */
  public record Note(
      OffsetDateTime at, String temperature, String pressure, String humidity, String by) {}

  /** The notes of a bench's room, newest first. */
  public static List<Note> of(RegisterView register, String bench) {
    List<Note> out = new ArrayList<>();
    for (Entry entry : register.history(About.room(bench))) {
      if (entry.kind().equals("room.noted")) {
        out.add(note(entry, Fields.of(entry)));
      }
    }
    Collections.reverse(out);
    return List.copyOf(out);
  }

  private static Note note(Entry entry, Fields fields) {
    return new Note(
        fields.time("stated_at").orElse(entry.at()),
        fields.text("temperature_c"),
        fields.text("pressure_hpa"),
        fields.text("humidity_pct"),
        entry.by());
  }
}
