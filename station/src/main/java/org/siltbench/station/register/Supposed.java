package org.siltbench.station.register;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;

/**
 * The register as it would answer if some more entries stood in the ledger. Nothing is written
 * anywhere. Lists answer with the rows that stand now; histories are as supposed.
 */
public final class Supposed implements RegisterView {

  private final RegisterView now;
  private final Subjects subjects;
  private final List<Entry> more = new ArrayList<>();
  private final Map<EntryRef, Map<String, @Nullable Object>> set = new LinkedHashMap<>();

  /** Nothing supposed so far. */
  public Supposed(RegisterView now, Subjects subjects) {
    this.now = now;
    this.subjects = subjects;
  }

  /** Supposes one more entry. */
  public void suppose(Entry entry) {
    more.add(entry);
    for (Amendment amendment : subjects.amendments(entry)) {
      set.computeIfAbsent(amendment.target(), ref -> new LinkedHashMap<>()).putAll(amendment.set());
    }
  }

  @Override
  public List<Entry> history(Subject subject) {
    Map<EntryRef, Entry> found = new LinkedHashMap<>();
    now.history(subject).forEach(entry -> found.put(entry.ref(), supposed(entry)));
    for (EntryRef ref : set.keySet()) {
      entry(ref).ifPresent(entry -> found.put(ref, entry));
    }
    for (Entry entry : more) {
      found.put(entry.ref(), entry);
    }
    return found.values().stream()
        .filter(entry -> isAbout(entry, subject))
        .sorted(Comparator.comparing(Place::of))
        .toList();
  }

  /** Corrections are about what those are about that they amend. */
  private boolean isAbout(Entry entry, Subject subject) {
    Set<Subject> about = new LinkedHashSet<>(subjects.of(entry));
    for (Amendment amendment : subjects.amendments(entry)) {
      entry(amendment.target()).ifPresent(target -> about.addAll(subjects.of(target)));
    }
    return about.contains(subject);
  }

  private Entry supposed(Entry entry) {
    Map<String, @Nullable Object> changes = set.get(entry.ref());
    if (changes == null) {
      return entry;
    }
    Map<String, @Nullable Object> data = new LinkedHashMap<>(entry.data());
    changes.forEach(
        (name, value) -> {
          if (value == null) {
            data.remove(name);
          } else {
            data.put(name, value);
          }
        });
    return entry.with(data);
  }

  @Override
  public Optional<Entry> entry(EntryRef ref) {
    Optional<Entry> added = more.stream().filter(one -> one.ref().equals(ref)).findFirst();
    return added.isPresent() ? added : now.entry(ref).map(this::supposed);
  }

  @Override
  public Optional<Entry> asWritten(EntryRef ref) {
    Optional<Entry> added = more.stream().filter(one -> one.ref().equals(ref)).findFirst();
    return added.isPresent() ? added : now.asWritten(ref);
  }

  @Override
  public List<Entry> amendmentsOf(EntryRef ref) {
    List<Entry> all = new ArrayList<>(now.amendmentsOf(ref));
    more.stream()
        .filter(one -> subjects.amendments(one).stream().anyMatch(a -> a.target().equals(ref)))
        .forEach(all::add);
    return all;
  }

  @Override
  public Optional<StateRow> state(Subject subject) {
    return subjects.fold(subject, history(subject));
  }

  @Override
  public List<StateRow> list(String type, String parent, String status) {
    return now.list(type, parent, status);
  }

  @Override
  public Map<String, Integer> counts(String type, String parent) {
    return now.counts(type, parent);
  }

  @Override
  public void each(Consumer<Entry> visitor, String... kinds) {
    since(0, visitor, kinds);
  }

  @Override
  public void since(long millis, Consumer<Entry> visitor, String... kinds) {
    now.since(millis, entry -> visitor.accept(supposed(entry)), kinds);
    Set<String> wanted = Set.of(kinds);
    more.stream()
        .filter(entry -> entry.hlc().millis() >= millis)
        .filter(entry -> wanted.isEmpty() || wanted.contains(entry.kind()))
        .forEach(visitor);
  }
}
