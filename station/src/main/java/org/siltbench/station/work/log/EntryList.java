package org.siltbench.station.work.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.siltbench.labels.log.Entered;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.register.Subject;
import org.siltbench.station.work.correct.Correction;

/**
 * The entries of a batch or of one filter as a person reads them: in force, and what was struck.
 */
public final class EntryList {

  private EntryList() {}

  /**
   * An entry.
   *
   * @param entry the entry, with corrections applied
   * @param corrected whether something of it was set later
   * @param voided whether it was taken back
   * @param fields its fields, those that were corrected in front
   */
  public record Shown(Entry entry, boolean corrected, boolean voided, List<Field> fields) {

    /** The value of a field; empty if it has none. */
    public String text(String field) {
      return fields.stream()
          .filter(one -> one.name().equals(field))
          .map(Field::value)
          .findFirst()
          .orElse("");
    }
  }

  /**
   * A field of an entry.
   *
   * @param name its stable name
   * @param value the value in force
   * @param struck the values it replaced, oldest first
   * @param correctable whether a correction may set it
   */
  public record Field(String name, String value, List<String> struck, boolean correctable) {

    /** Copies the list. */
    public Field {
      struck = List.copyOf(struck);
    }
  }

  /** All entries about a batch and its filters, the newest first. */
  public static List<Shown> of(RegisterView register, BatchState batch) {
    List<Subject> subjects = new ArrayList<>();
    subjects.add(About.batch(batch.code()));
    batch.filters().keySet().forEach(id -> subjects.add(About.filter(id)));
    return of(register, subjects);
  }

  /** All entries about one filter, the newest first. */
  public static List<Shown> of(RegisterView register, String filter) {
    return of(register, List.of(About.filter(filter)));
  }

  private static List<Shown> of(RegisterView register, List<Subject> subjects) {
    Map<EntryRef, Entry> found = new LinkedHashMap<>();
    for (Subject subject : subjects) {
      for (Entry entry : register.history(subject)) {
        found.put(entry.ref(), entry);
        register.amendmentsOf(entry.ref()).forEach(one -> found.putIfAbsent(one.ref(), one));
      }
    }
    return found.values().stream()
        .sorted(
            Comparator.comparing(Entry::hlc)
                .thenComparing(entry -> entry.ref().bench())
                .thenComparingLong(entry -> entry.ref().seq())
                .reversed())
        .map(entry -> shown(register, entry))
        .toList();
  }

  /** One entry. */
  public static Shown shown(RegisterView register, Entry entry) {
    Amendments amendments = new Amendments(register, entry);
    Set<String> can = new TreeSet<>(Correction.fields(entry));
    List<Field> fields = new ArrayList<>();
    boolean corrected = false;
    for (String name : names(register, entry, can)) {
      Entered entered = amendments.entered(name, "");
      Field field = new Field(name, entered.value(), entered.struck(), can.contains(name));
      corrected |= !field.struck().isEmpty();
      fields.add(field);
    }
    fields.sort(Comparator.comparing(field -> field.struck().isEmpty()));
    return new Shown(entry, corrected, Fields.of(entry).flag("void"), fields);
  }

  /** Fields in the order of the entry, those that could be set behind them; lists left out. */
  private static List<String> names(RegisterView register, Entry entry, Set<String> can) {
    List<String> out = new ArrayList<>();
    Fields data = Fields.of(entry);
    register.asWritten(entry.ref()).ifPresent(first -> first.data().keySet().forEach(out::add));
    entry.data().keySet().stream().filter(name -> !out.contains(name)).forEach(out::add);
    can.stream().filter(name -> !out.contains(name) && !name.equals("void")).forEach(out::add);
    out.removeIf(name -> data.text(name).isEmpty() && !can.contains(name) && !name.equals("void"));
    return out;
  }
}
