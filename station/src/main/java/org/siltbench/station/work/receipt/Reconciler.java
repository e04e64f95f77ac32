package org.siltbench.station.work.receipt;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.siltbench.station.Problem;
import org.siltbench.station.life.About;
import org.siltbench.station.life.Act;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Life;
import org.siltbench.station.life.Outcome;
import org.siltbench.station.life.Role;
import org.siltbench.station.life.SampleRecord;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.TripState;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.receipt.Reconciliation.Accepted;
import org.siltbench.station.work.receipt.Reconciliation.Kind;
import org.siltbench.station.work.receipt.Reconciliation.Refused;

/** Holds the notes against the bags and the bags against the trip. */
final class Reconciler {

  private final RegisterView register;
  private final ReceiptTable table;
  private final Optional<Set<String>> scanned;
  private final List<Accepted> accepted = new ArrayList<>();
  private final List<String> already = new ArrayList<>();
  private final List<Refused> refused = new ArrayList<>();
  private final Set<String> trips = new LinkedHashSet<>();

  Reconciler(RegisterView register, ReceiptTable table, Optional<Set<String>> scanned) {
    this.register = register;
    this.table = table;
    this.scanned = scanned;
  }

  Reconciliation reconcile() {
    Map<String, Integer> notes = new HashMap<>();
    table.rows().forEach(row -> notes.merge(row.filter(), 1, Integer::sum));
    scanned.orElse(Set.of()).forEach(this::noteTrip);
    for (ReceiptRow row : table.rows()) {
      judge(row, notes.getOrDefault(row.filter(), 0));
    }
    return new Reconciliation(
        accepted,
        already,
        refused,
        table.unused(),
        bagsWithoutNotes(notes.keySet()),
        missing(notes.keySet()),
        new Coherence(register, accepted).warnings());
  }

  private void noteTrip(String bag) {
    Filters.find(register, bag)
        .map(FilterState::trip)
        .filter(trip -> !trip.isEmpty())
        .ifPresent(trips::add);
  }

  private void judge(ReceiptRow row, int notes) {
    Optional<FilterState> known = Filters.find(register, row.filter());
    if (known.isEmpty()) {
      refuse(row, Kind.UNKNOWN, Said.of(ReceiptSays.UNKNOWN));
    } else if (notes > 1) {
      refuse(row, Kind.TWO_NOTES, Said.of(ReceiptSays.TWO_LINES, notes));
    } else if (scanned.isPresent() && !scanned.get().contains(row.filter())) {
      refuse(row, Kind.NOTES_WITHOUT_BAG, Said.of(ReceiptSays.NO_BAG));
    } else {
      judge(row, known.get());
    }
  }

  private void judge(ReceiptRow row, FilterState state) {
    if (!state.trip().isEmpty()) {
      trips.add(state.trip());
    }
    Outcome outcome = Life.outcome(state.status(), Act.RECEIVE, state.role());
    if (outcome instanceof Outcome.Refuses no) {
      if (sameAsBefore(row, state)) {
        already.add(row.filter());
      } else {
        refuse(row, Kind.STATUS, Said.of(ReceiptSays.BOTH, no.words(), no.wordsOut()));
      }
      return;
    }
    try {
      accepted.add(
          new Accepted(
              row, state.batch(), role(row, state), state.trip(), row.bag().compare(state)));
    } catch (Problem.Refused e) {
      refuse(row, Kind.BAG_MASS, Said.of(ReceiptSays.BOTH, e.happened(), e.wayOut()));
    }
  }

  private static boolean sameAsBefore(ReceiptRow row, FilterState state) {
    Optional<SampleRecord> before = state.record();
    return before.isPresent()
        && row.columns().entrySet().stream()
            .allMatch(cell -> before.get().text(cell.getKey()).equals(cell.getValue()));
  }

  private static String role(ReceiptRow row, FilterState state) {
    if (!row.text("role").isEmpty()) {
      return row.text("role");
    }
    return state.role() == Role.SPARE ? Role.SAMPLE.code() : state.role().code();
  }

  private void refuse(ReceiptRow row, Kind kind, Words why) {
    refused.add(new Refused(row.line(), row.filter(), kind, why));
  }

  private List<String> bagsWithoutNotes(Set<String> noted) {
    return scanned.orElse(Set.of()).stream().filter(bag -> !noted.contains(bag)).sorted().toList();
  }

  private List<String> missing(Set<String> noted) {
    Set<String> out = new TreeSet<>();
    for (String trip : trips) {
      TripState.fold(trip, register.history(About.trip(trip))).ifPresent(s -> out.addAll(s.out()));
    }
    out.removeAll(noted);
    out.removeAll(table.unused());
    scanned.ifPresent(out::removeAll);
    out.removeIf(id -> !stillOut(id));
    return List.copyOf(out);
  }

  private boolean stillOut(String id) {
    return Filters.find(register, id).map(s -> s.status() == Status.ISSUED).orElse(false);
  }
}
