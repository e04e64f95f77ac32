package org.siltbench.station.life;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.siltbench.calc.constant.ConstantRule;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.FilterState.Oddity;
import org.siltbench.station.life.Outcome.Goes;
import org.siltbench.station.life.Outcome.Refuses;

/**
 * Folds a filter's history, in merge order, into its state. It never refuses: what does not follow
 * is kept and named as an oddity, since the entry is on disk and true as a record.
 */
public final class FilterFold {

  private final String id;
  private String batch = "";
  private String lot = "";
  private String method = "";
  private Role plannedRole = Role.SAMPLE;
  private boolean duplicate;
  private Role role = Role.SAMPLE;
  private Status status = Status.PLANNED;
  private final List<Weighed> weighings = new ArrayList<>();
  private int labelRevision;
  private Optional<Mass> labelMass = Optional.empty();
  private boolean bagClosed;
  private String trip = "";
  private boolean missing;
  private final List<SampleRecord> records = new ArrayList<>();
  private final List<Stay> stays = new ArrayList<>();
  private final List<String> holds = new ArrayList<>();
  private String report = "";
  private String rejected = "";
  private final List<Oddity> oddities = new ArrayList<>();

  private FilterFold(String id) {
    this.id = id;
  }

  /** The state of a filter; empty if no batch has it. */
  public static Optional<FilterState> fold(String id, List<Entry> history) {
    FilterFold fold = new FilterFold(id);
    for (Entry entry : history) {
      if (!Fields.of(entry).flag("void")) {
        fold.take(entry, Fields.of(entry));
      }
    }
    return fold.batch.isEmpty() ? Optional.empty() : Optional.of(fold.state());
  }

  private FilterState state() {
    return new FilterState(
        id,
        batch,
        lot,
        method,
        plannedRole,
        duplicate,
        role,
        status,
        weighings,
        labelRevision,
        labelMass,
        bagClosed,
        trip,
        missing,
        records,
        stays,
        holds,
        report,
        rejected,
        oddities);
  }

  private void take(Entry entry, Fields data) {
    switch (entry.kind()) {
      case "batch.created" -> created(data);
      case "weighing" -> weighed(entry, data);
      case "label.printed" -> labelled(entry, data);
      case "bag.closed" -> bagClosed = step(entry, Act.CLOSE_BAG);
      case "batch.issued" -> issued(entry, data);
      case "batch.returned" -> returned(entry);
      case "sample.received" -> received(entry, data);
      case "bag.missing" -> missing = step(entry, Act.MISS);
      case "dry.started" -> dryStarted(entry, data);
      case "dry.ended" -> dryEnded(entry, data);
      case "hold" -> held(data);
      case "release" -> released(entry, data);
      case "filter.rejected" -> rejected(entry, data);
      default -> {
        // kinds of a later version, and corrections, which the register has already applied
      }
    }
  }

  /** Moves along the table; true if the table allows it. */
  private boolean step(Entry entry, Act act) {
    Outcome outcome = Life.outcome(status, act, role);
    if (outcome instanceof Refuses no) {
      oddities.add(new Oddity(entry.ref(), act, no.why()));
      return false;
    }
    status = ((Goes) outcome).to();
    return true;
  }

  private void created(Fields data) {
    batch = data.text("batch");
    lot = data.text("lot");
    method = data.text("method");
    for (Fields row : data.rows("filters")) {
      if (row.text("filter").equals(id)) {
        plannedRole = roleOr(row.text("role"), Role.SAMPLE);
        role = plannedRole;
        duplicate = row.flag("duplicate");
      }
    }
  }

  private static Role roleOr(String code, Role otherwise) {
    for (Role role : Role.values()) {
      if (role.code().equals(code)) {
        return role;
      }
    }
    return otherwise;
  }

  private void weighed(Entry entry, Fields data) {
    Optional<Weighed> read = WeighedReader.read(entry, data);
    if (read.isEmpty()) {
      return;
    }
    weighings.add(read.get());
    Weighed weighed = judged(data);
    if (!weighed.purpose().equals("lot")) {
      step(entry, actOf(weighed));
    }
    if (weighed.post() && weighed.forResult() && weighed.verdict().equals("constant")) {
      step(entry, Act.PROVE);
    }
  }

  /** The newest weighing with its verdict made anew, so that it follows earlier corrections. */
  private Weighed judged(Fields data) {
    Weighed last = weighings.get(weighings.size() - 1);
    Optional<ConstantRule> rule = VerdictRule.rule(data);
    if (rule.isEmpty() || !last.post() || !last.forResult()) {
      return last;
    }
    FilterState now = state();
    List<Weighed> series = Series.onePerCycle(now.isIgnition(last) ? now.ignited() : now.post());
    Weighed judged = last.withVerdict(VerdictRule.verdict(rule.get(), data, series, now.preMass()));
    weighings.set(weighings.size() - 1, judged);
    return judged;
  }

  private static Act actOf(Weighed weighed) {
    return switch (weighed.purpose()) {
      case "repeat" -> Act.REPEAT;
      case "audit" -> Act.AUDIT;
      default -> weighed.post() ? Act.POST_WEIGH : Act.PRE_WEIGH;
    };
  }

  private void labelled(Entry entry, Fields data) {
    step(entry, Act.LABEL);
    labelRevision = Math.max(labelRevision, data.whole("revision", 1));
    labelMass = data.mass("mass_g");
  }

  private void issued(Entry entry, Fields data) {
    if (step(entry, Act.ISSUE)) {
      trip = data.text("trip");
    }
  }

  private void returned(Entry entry) {
    if (step(entry, Act.RETURN)) {
      trip = "";
      missing = false;
    }
  }

  private void received(Entry entry, Fields data) {
    records.add(SampleRecord.of(entry));
    if (step(entry, Act.RECEIVE)) {
      role = roleOr(data.text("role"), role == Role.SPARE ? Role.SAMPLE : role);
      missing = false;
    }
  }

  private void dryStarted(Entry entry, Fields data) {
    Optional<Stay> begun = Stays.begun(id, entry, data);
    if (begun.isPresent()) {
      step(entry, Stays.actOf(begun.get()));
      stays.removeIf(stay -> stay.open() && stay.cycle().equals(begun.get().cycle()));
      stays.add(begun.get());
    }
  }

  private void dryEnded(Entry entry, Fields data) {
    String cycle = data.text("cycle");
    for (int i = stays.size() - 1; i >= 0; i--) {
      Stay stay = stays.get(i);
      if (stay.cycle().equals(cycle) && stay.open()) {
        stays.set(i, Stays.ended(stay, entry, data));
        step(entry, stay.pre() ? Act.PRE_DRY : Act.END_DRY);
        return;
      }
    }
    oddities.add(new Oddity(entry.ref(), Act.END_DRY, "it was not in this drying cycle."));
  }

  private void held(Fields data) {
    if (data.flag("lifted")) {
      holds.clear();
    } else {
      holds.add(data.text("reason"));
    }
  }

  private void released(Entry entry, Fields data) {
    if (status != Status.REJECTED && step(entry, Act.RELEASE)) {
      report = data.text("report");
    }
  }

  private void rejected(Entry entry, Fields data) {
    if (step(entry, Act.REJECT)) {
      rejected = data.text("reason");
    }
  }
}
