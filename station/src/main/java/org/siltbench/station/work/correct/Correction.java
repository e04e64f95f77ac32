package org.siltbench.station.work.correct;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.life.Fields;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.Facts;

/**
 * Sets fields of an earlier entry. The line stays as it was written.
 *
 * @param target the entry
 * @param set new values by field; {@code filters.ID.dish} and {@code filters.ID.role} reach into a
 *     list of filters
 * @param reason why
 */
public record Correction(EntryRef target, Map<String, String> set, String reason) {

  /** Keeps the order; refuses a correction of nothing or without a reason. */
  public Correction {
    set = new LinkedHashMap<>(set);
    reason = Reasons.check(reason);
    if (set.isEmpty()) {
      throw new Problem.WrongUse(CorrectSays.NOTHING_SET);
    }
  }

  /** The fields of an entry that a correction may set; none for entries that stand for good. */
  public static List<String> fields(Entry entry) {
    return Correctable.fields(entry.kind());
  }

  /** Writes it. */
  public Entry record(Bench bench) {
    return bench.act(register -> List.of(draft(register, bench))).get(0);
  }

  private Draft draft(RegisterView register, Bench bench) {
    Entry entry = register.entry(target).orElseThrow(this::unknown);
    Map<String, @Nullable Object> values = new LinkedHashMap<>();
    for (Map.Entry<String, String> one : set.entrySet()) {
      put(values, entry, one.getKey(), one.getValue(), register, bench);
    }
    SoundVolumes.check(entry, values);
    Facts facts = new Facts().put("entry", named(target)).put("set", values).put("reason", reason);
    if (values.containsKey("void")) {
      facts.put("override", true); // taking an entry back asks for a supervisor
    }
    return facts.draft("corrected");
  }

  private Problem.Refused unknown() {
    return new Problem.Refused(CorrectSays.NO_ENTRY, target);
  }

  private static void put(
      Map<String, @Nullable Object> values,
      Entry entry,
      String field,
      String text,
      RegisterView register,
      Bench bench) {
    if (FilterLists.reaches(field)) {
      values.put("filters", FilterLists.with(entry, values, field, text));
      return;
    }
    FieldType type = Correctable.type(entry.kind(), field);
    if (text.isEmpty() && !field.equals("filter")) {
      values.put(field, null);
      return;
    }
    Object value = type.require(field, text, register, bench.clock());
    if (value.toString().equals(Fields.of(entry).text(field))) {
      throw new Problem.Refused(CorrectSays.SAME, field, entry.ref(), text);
    }
    values.put(field, value);
  }

  static Map<String, Object> named(EntryRef ref) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("bench", ref.bench());
    out.put("seq", ref.seq());
    return out;
  }
}
