package org.siltbench.station.work.correct;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.Filters;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.Facts;

/**
 * Two filters were taken for each other: their entries are exchanged in one act.
 *
 * @param a one filter
 * @param b the other
 * @param what which entries
 * @param reason why
 */
public record Swap(String a, String b, What what, String reason) {

  /** Which entries are exchanged. */
  public enum What {
    /** Drying and weighing after the field: the bags were mixed up in the lab or at the river. */
    POST,
    /** The field notes: the lines were mixed up on the sheet. */
    NOTES,
    /** The clean masses: the filters went into each other's bag. */
    PRE;

    /** Reads post, notes or pre. */
    public static What of(String word) {
      for (What what : values()) {
        if (what.name().toLowerCase(java.util.Locale.ROOT).equals(word)) {
          return what;
        }
      }
      throw new Problem.WrongUse(CorrectSays.NO_SWAP, word);
    }

    boolean takes(Entry entry) {
      Fields data = Fields.of(entry);
      return switch (entry.kind()) {
        case "weighing" -> this != NOTES && data.text("status").equals("post") == (this == POST);
        case "dry.started" -> this == POST && !data.text("purpose").equals("pre");
        case "dry.ended" -> this == POST;
        case "sample.received" -> this == NOTES;
        default -> false;
      };
    }
  }

  /** Refuses a swap of one filter with itself. */
  public Swap {
    reason = Reasons.check(reason);
    if (a.equals(b)) {
      throw new Problem.WrongUse(CorrectSays.SAME_ID, a);
    }
  }

  /** Writes it. */
  public Entry record(Bench bench) {
    return bench.act(register -> List.of(draft(register))).get(0);
  }

  private Draft draft(RegisterView register) {
    Filters.require(register, a);
    Filters.require(register, b);
    List<Map<String, @Nullable Object>> set = new ArrayList<>();
    exchange(register, a, b, set);
    exchange(register, b, a, set);
    if (set.isEmpty()) {
      throw new Problem.Refused(CorrectSays.NOTHING_TO_SWAP, a, b);
    }
    return new Facts()
        .put("filters", List.of(a, b))
        .put("what", what.name().toLowerCase(java.util.Locale.ROOT))
        .put("set", set)
        .put("reason", reason)
        .draft("swapped");
  }

  private void exchange(
      RegisterView register, String from, String to, List<Map<String, @Nullable Object>> set) {
    for (Entry entry : register.history(About.filter(from))) {
      if (what.takes(entry)) {
        amendment(entry, from, to).forEach(set::add);
      }
    }
  }

  /** None where both are in one list: then they shared the oven. */
  private static List<Map<String, @Nullable Object>> amendment(
      Entry entry, String from, String to) {
    Map<String, @Nullable Object> out = new LinkedHashMap<>(Correction.named(entry.ref()));
    Fields data = Fields.of(entry);
    if (data.find("filter").isPresent()) {
      out.put("filter", to);
      return List.of(out);
    }
    if (data.filters("filters").contains(to)) {
      return List.of();
    }
    out.put("filters", renamed(data, from, to));
    return List.of(out);
  }

  private static List<Object> renamed(Fields data, String from, String to) {
    List<Object> out = new ArrayList<>();
    for (String id : data.texts("filters")) {
      out.add(id.equals(from) ? to : id);
    }
    for (Fields row : data.rows("filters")) {
      Map<String, @Nullable Object> copy = new LinkedHashMap<>(row.all());
      copy.replace("filter", from, to);
      out.add(copy);
    }
    return out;
  }
}
