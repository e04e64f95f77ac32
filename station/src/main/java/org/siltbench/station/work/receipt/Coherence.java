package org.siltbench.station.work.receipt;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.siltbench.station.life.About;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.SampleState;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.receipt.Reconciliation.Accepted;
import org.siltbench.station.work.receipt.Reconciliation.Warning;

/** What lines say about each other: samples over several filters, pairs, volumes. */
final class Coherence {

  private final RegisterView register;
  private final List<Accepted> accepted;
  private final List<Warning> warnings = new ArrayList<>();

  Coherence(RegisterView register, List<Accepted> accepted) {
    this.register = register;
    this.accepted = accepted;
  }

  List<Warning> warnings() {
    by(row -> row.sample()).forEach(this::sample);
    by(row -> row.text("pair")).forEach(this::pair);
    accepted.forEach(this::filter);
    return warnings;
  }

  private void warn(String filter, Words what) {
    warnings.add(new Warning(filter, what));
  }

  private Map<String, List<ReceiptRow>> by(Function<ReceiptRow, String> key) {
    Map<String, List<ReceiptRow>> out = new LinkedHashMap<>();
    for (Accepted one : accepted) {
      String name = key.apply(one.row());
      if (!name.isEmpty()) {
        out.computeIfAbsent(name, k -> new ArrayList<>()).add(one.row());
      }
    }
    return out;
  }

  private void sample(String number, List<ReceiptRow> rows) {
    int before =
        SampleState.fold(number, register.history(About.sample(number)))
            .map(s -> s.records().size())
            .orElse(0);
    long sites = rows.stream().map(row -> row.text("site")).distinct().count();
    if (sites > 1) {
      warn("", Said.of(ReceiptSays.SITES_DIFFER, number));
    }
    boolean moreExpected =
        rows.stream()
            .anyMatch(
                row ->
                    row.text("left_to").equals("next")
                        || row.conditions().contains(Condition.RESIDUE_IN_BAG));
    if (moreExpected && rows.size() + before < 2) {
      warn("", Said.of(ReceiptSays.FURTHER_FILTER, number));
    }
  }

  private void pair(String pair, List<ReceiptRow> rows) {
    long samples = rows.stream().map(ReceiptRow::sample).distinct().count();
    if (samples == 1) {
      warn("", Said.of(ReceiptSays.PAIR_OF_ONE, pair));
    } else if (samples > 2) {
      warn("", Said.of(ReceiptSays.PAIR_CROWDED, pair, samples));
    }
  }

  private void filter(Accepted one) {
    ReceiptRow row = one.row();
    boolean volume = !row.text("volume_ml").isEmpty() || !row.text("portions_ml").isEmpty();
    if (!volume && one.role().equals("sample")) {
      warn(row.filter(), Said.of(ReceiptSays.NO_VOLUME, row.filter()));
    }
    for (Condition condition : row.conditions()) {
      if (condition != Condition.OK) {
        warn(row.filter(), Said.of(ReceiptSays.CONDITION, row.filter(), condition.means()));
      }
    }
    Optional<FilterState> state = Filters.find(register, row.filter());
    if (state.isPresent() && state.get().trip().isEmpty()) {
      warn(row.filter(), Said.of(ReceiptSays.NEVER_ISSUED, row.filter()));
    }
    if (!one.hint().isEmpty()) {
      warn(row.filter(), one.hint());
    }
  }
}
