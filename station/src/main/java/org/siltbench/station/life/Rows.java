package org.siltbench.station.life;

import java.util.List;
import java.util.Optional;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.register.StateRow;
import org.siltbench.station.register.Subject;

/** The folded rows that lists show. */
final class Rows {

  private Rows() {}

  static Optional<StateRow> fold(Subject subject, List<Entry> history) {
    String id = subject.id();
    return switch (subject.type()) {
      case About.FILTER -> FilterFold.fold(id, history).map(s -> filter(subject, s));
      case About.BATCH -> BatchState.fold(id, history).map(s -> batch(subject, s));
      case About.CYCLE -> CycleState.fold(id, history).map(s -> cycle(subject, s));
      case About.LOT -> LotState.fold(id, history).map(s -> lot(subject, s));
      case About.SAMPLE -> SampleState.fold(id, history).map(s -> sample(subject, s));
      case About.TRIP -> TripState.fold(id, history).map(s -> trip(subject, s));
      case About.BALANCE -> BalanceState.fold(id, history).map(s -> balance(subject, s));
      case About.WEIGHT -> newest(subject, history, "weight.described");
      case About.METHOD -> newest(subject, history, "method.adopted");
      case About.ROOM -> newest(subject, history, "room.noted");
      case About.BENCH -> newest(subject, history, "bench.created");
      default -> Optional.empty();
    };
  }

  private static StateRow filter(Subject subject, FilterState s) {
    Summary summary =
        new Summary()
            .put("role", s.role().code())
            .put("sample", s.record().map(SampleRecord::sample).orElse(""))
            .put("pre_g", s.preMass().map(Weighed::digits).orElse(""))
            .put("post_g", s.postMass().map(Weighed::digits).orElse(""))
            .put("verdict", s.postMass().map(Weighed::verdict).orElse(""))
            .put("label", s.labelRevision())
            .put("trip", s.trip())
            .put("missing", s.missing())
            .put("held", !s.holds().isEmpty())
            .put("report", s.report())
            .put("rejected", s.rejected())
            .put("oddities", s.oddities().size());
    s.lastStay().ifPresent(stay -> stay(summary, stay));
    return new StateRow(subject, s.batch(), s.status().code(), summary.json());
  }

  private static void stay(Summary summary, Stay stay) {
    summary
        .put("cycle", stay.cycle())
        .put("dish", stay.dish())
        .put("cooled_until", stay.cooledUntil().map(Object::toString).orElse(""))
        .put("useful_until", stay.usefulUntil().map(Object::toString).orElse(""));
  }

  private static StateRow batch(Subject subject, BatchState s) {
    Summary summary =
        new Summary()
            .put("name", s.name())
            .put("method", s.method())
            .put("filters", s.filters().size())
            .put("trips", String.join(", ", s.trips()))
            .put("releases", String.join(", ", s.releases()));
    return new StateRow(subject, s.lot(), "", summary.json());
  }

  private static StateRow cycle(Subject subject, CycleState s) {
    Summary summary =
        new Summary()
            .put("purpose", s.purpose())
            .put("filters", s.dishes().size())
            .put("in", s.in().toString())
            .put("out", s.out().map(Object::toString).orElse(""))
            .put("cooled_until", s.cooledUntil().map(Object::toString).orElse(""))
            .put("useful_until", s.usefulUntil().map(Object::toString).orElse(""));
    return new StateRow(subject, "", s.open() ? "open" : "ended", summary.json());
  }

  private static StateRow lot(Subject subject, LotState s) {
    Summary summary =
        new Summary()
            .put("material", s.fields().text("material"))
            .put("pore_um", s.fields().text("pore_um"))
            .put("diameter_mm", s.fields().text("diameter_mm"));
    return new StateRow(subject, "", s.verdict(), summary.json());
  }

  private static StateRow sample(Subject subject, SampleState s) {
    SampleRecord first = s.records().get(0);
    Summary summary =
        new Summary()
            .put("filters", s.records().size())
            .put("site", first.text("site"))
            .put("collected", first.text("collected"));
    return new StateRow(subject, "", "", summary.json());
  }

  private static StateRow trip(Subject subject, TripState s) {
    Summary summary =
        new Summary()
            .put("batches", String.join(", ", s.batches()))
            .put("out", s.out().size())
            .put("missing", s.missing().size());
    return new StateRow(subject, "", "", summary.json());
  }

  private static StateRow balance(Subject subject, BalanceState s) {
    String status =
        s.lastCheck().map(check -> check.pass() ? "passed" : "failed").orElse("unchecked");
    Summary summary =
        new Summary()
            .put("serial", s.described().map(f -> f.text("serial")).orElse(""))
            .put("checked", s.lastCheck().map(check -> check.at().toString()).orElse(""))
            .put("checks", s.checks().size())
            .put("overrides", s.overrides().size());
    return new StateRow(subject, "", status, summary.json());
  }

  private static Optional<StateRow> newest(Subject subject, List<Entry> history, String kind) {
    return Live.newest(history, kind)
        .map(entry -> new StateRow(subject, "", "", new Summary().json()));
  }
}
