package org.siltbench.station.work.release;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.result.Concentration;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.life.Act;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Life;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.receipt.Condition;
import org.siltbench.station.work.results.BatchResults;
import org.siltbench.station.work.results.BatchResults.FilterResult;

/**
 * Results of a batch leave the lab.
 *
 * @param batch the batch's code
 * @param report the report's number; empty for the batch's next one
 * @param partial filters without a result may follow in an amended report
 * @param accept why results that a rule would hold back are released all the same; empty if none
 */
public record Release(String batch, String report, boolean partial, String accept) {

  /** Writes it. */
  public Entry record(Bench bench, MethodBook methods) {
    BatchState state = Batches.require(bench.register(), batch);
    BatchResults results = BatchResults.of(bench, methods, state);
    return bench
        .act(
            register -> {
              requireSame(bench, methods, results);
              return List.of(draft(register, bench, results));
            })
        .get(0);
  }

  /** Another bench or process may have written since the results were calculated. */
  private void requireSame(Bench bench, MethodBook methods, BatchResults results) {
    BatchState state = Batches.require(bench.register(), batch);
    if (!rows(BatchResults.of(bench, methods, state)).equals(rows(results))) {
      throw new Problem.Refused(ReleaseSays.CHANGED_MEANWHILE);
    }
  }

  private Draft draft(RegisterView register, Bench bench, BatchResults results) {
    if (results.rows().isEmpty()) {
      throw new Problem.Refused(ReleaseSays.NO_RESULTS, results.batch().name());
    }
    requireComplete(results);
    results.rows().forEach(this::requireReleasable);
    List<Map<String, Object>> rows = rows(results);
    List<Entry> before = releases(register, batch);
    String last = before.isEmpty() ? "" : Fields.of(before.get(before.size() - 1)).text("report");
    if (!before.isEmpty() && same(before.get(before.size() - 1), rows)) {
      throw new Problem.Refused(ReleaseSays.NOT_CHANGED, last);
    }
    Facts facts = new Facts().put("batch", batch).put("report", number(before));
    if (!last.isEmpty()) {
      facts.put("replaces", last);
    }
    facts
        .put("rows", rows)
        .put("filters", results.rows().stream().map(row -> row.state().id()).toList())
        .put("analyst", String.join(", ", analysts(results)))
        .put("approver", bench.operator());
    if (!accept.isEmpty()) {
      facts.put("accepted", accept);
    }
    return facts.draft("release");
  }

  private void requireComplete(BatchResults results) {
    List<Words> open = new ArrayList<>();
    open(results)
        .forEach((id, why) -> open.add(Said.of(ReleaseSays.OPEN_FILTER, id, Status.words(why))));
    if (!open.isEmpty() && !partial) {
      throw new Problem.Refused(ReleaseSays.NOT_FINISHED, Words.joined(", ", open));
    }
  }

  /** Filters that came back and have no result yet, and where they are. */
  static Map<String, String> open(BatchResults results) {
    Map<String, String> out = new LinkedHashMap<>();
    results
        .pending()
        .forEach(
            (id, why) -> {
              if (Set.of("received", "drying", "post-weighed").contains(why)) {
                out.put(id, why);
              }
            });
    return out;
  }

  private void requireReleasable(FilterResult row) {
    FilterState state = row.state();
    Life.require(state.id(), state.status(), Act.RELEASE, state.role());
    if (!state.holds().isEmpty()) {
      throw new Problem.Refused(
          ReleaseSays.HELD,
          state.id(),
          Words.joined("; ", state.holds().stream().map(Condition::told).toList()));
    }
    Words against = against(row);
    if (!against.isEmpty() && accept.isEmpty()) {
      throw new Problem.Refused(ReleaseSays.AGAINST, state.id(), against);
    }
  }

  /**
   * What a rule says against a result. A blank is not held to constant mass: a share of next to no
   * residue can never be met; it is judged against its own limits.
   */
  static Words against(FilterResult row) {
    boolean water = row.result().input().role().isWater();
    if (water && row.result().constant().kind() == ConstantVerdict.Kind.DRY_AGAIN) {
      return Elsewhere.words(row.result().constant().reason());
    }
    return row.result().flags().stream()
        .filter(flag -> flag.level() == Flag.Level.STOP)
        .map(flag -> Elsewhere.words(flag.reason()))
        .reduce((one, more) -> Words.joined(" ", List.of(one, more)))
        .orElse(Words.none());
  }

  static List<Entry> releases(RegisterView register, String batch) {
    return register.history(About.batch(batch)).stream()
        .filter(entry -> entry.kind().equals("release"))
        .toList();
  }

  private String number(List<Entry> before) {
    String wanted = report.strip();
    String number = wanted.isEmpty() ? batch + "-R" + (before.size() + 1) : wanted;
    boolean used =
        before.stream().anyMatch(entry -> Fields.of(entry).text("report").equals(number));
    if (used) {
      throw new Problem.Refused(ReleaseSays.NUMBER_USED, number);
    }
    return number;
  }

  /** True if these results are those of the newest report. */
  static boolean released(List<Entry> before, BatchResults results) {
    return !before.isEmpty() && same(before.get(before.size() - 1), rows(results));
  }

  private static boolean same(Entry release, List<Map<String, Object>> rows) {
    List<Map<String, @Nullable Object>> before =
        Fields.of(release).rows("rows").stream().map(Fields::all).toList();
    return before.equals(rows);
  }

  private static Set<String> analysts(BatchResults results) {
    Set<String> out = new TreeSet<>();
    for (FilterResult row : results.rows()) {
      row.state().post().stream().map(Weighed::by).forEach(out::add);
    }
    return out;
  }

  /** The figures as they are released: text, so that they stay what they were. */
  private static List<Map<String, Object>> rows(BatchResults results) {
    List<Map<String, Object>> out = new ArrayList<>();
    for (FilterResult row : results.rows()) {
      Map<String, Object> fields = new LinkedHashMap<>();
      Concentration c = row.result().concentration();
      fields.put("filter", row.state().id());
      fields.put("sample", row.note("sample"));
      fields.put("residue_mg", row.result().residue().toMilligrams());
      fields.put("conc_mg_l", c == null ? "" : Double.toString(c.mgPerL()));
      fields.put("U_mg_l", c == null ? "" : Double.toString(c.expanded()));
      fields.put("flags", Flag.join(row.result().flags()));
      out.add(fields);
    }
    return out;
  }
}
