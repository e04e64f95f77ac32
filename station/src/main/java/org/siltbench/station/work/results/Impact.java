package org.siltbench.station.work.results;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.siltbench.calc.result.Concentration;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.results.BatchResults.FilterResult;

/** Which results an act changes: the results before it held against those after it. */
public final class Impact {

  private final Bench bench;
  private final MethodBook methods;

  public Impact(Bench bench, MethodBook methods) {
    this.bench = bench;
    this.methods = methods;
  }

  /**
   * A result that changed.
   *
   * @param filter the filter
   * @param sample its sample, or empty
   * @param before in words
   * @param after in words
   * @param report the report it was released in, or empty: that one must be amended
   */
  public record Change(String filter, String sample, Words before, Words after, String report) {}

  /** The entries written and the results that changed. */
  public record Outcome(List<Entry> written, List<Change> changes) {}

  /** Does the act and compares. */
  public Outcome around(Set<String> filters, Supplier<List<Entry>> act) {
    Set<String> batches = batches(filters);
    Map<String, Line> before = lines(batches);
    List<Entry> written = act.get();
    Map<String, Line> after = lines(batches);
    return new Outcome(written, changes(before, after));
  }

  /** The filters an entry is about; all filters of the lab for entries about none. */
  public Set<String> about(EntryRef ref) {
    Optional<Entry> entry = bench.register().entry(ref);
    Set<String> out = new LinkedHashSet<>();
    entry
        .map(Fields::of)
        .ifPresent(
            data -> {
              data.find("filter").ifPresent(out::add);
              out.addAll(data.filters("filters"));
            });
    return out;
  }

  private Set<String> batches(Set<String> filters) {
    Set<String> codes = new TreeSet<>();
    if (filters.isEmpty()) {
      Batches.all(bench.register()).forEach(batch -> codes.add(batch.code()));
    }
    for (String id : filters) {
      Filters.find(bench.register(), id).map(FilterState::batch).ifPresent(codes::add);
    }
    return codes;
  }

  private record Line(String sample, Words text, String report) {}

  private Map<String, Line> lines(Set<String> batches) {
    Map<String, Line> out = new LinkedHashMap<>();
    for (String code : batches) {
      try {
        BatchResults results =
            BatchResults.of(bench, methods, Batches.require(bench.register(), code));
        results.rows().forEach(row -> out.put(row.state().id(), line(results, row)));
      } catch (Problem.Refused e) {
        out.put(code, new Line("", e::what, ""));
      }
    }
    return out;
  }

  private static Line line(BatchResults results, FilterResult row) {
    Concentration c = row.result().concentration();
    int digits = results.method().report().digits();
    String text =
        row.result().residue().toMilligrams()
            + " mg"
            + (c == null
                ? ""
                : ", "
                    + ForPeople.value(c.mgPerL(), digits, 0)
                    + " ± "
                    + ForPeople.uncertainty(c.expanded())
                    + " mg/L");
    Words words =
        row.result().constant().isConstant()
            ? Said.of(ResultsSays.CONSTANT, text)
            : Words.verbatim(text);
    return new Line(row.note("sample"), words, row.state().report());
  }

  private static List<Change> changes(Map<String, Line> before, Map<String, Line> after) {
    Line none = new Line("", Said.of(ResultsSays.NO_RESULT), "");
    List<Change> out = new ArrayList<>();
    Set<String> ids = new LinkedHashSet<>(before.keySet());
    ids.addAll(after.keySet());
    for (String id : ids) {
      Line was = before.getOrDefault(id, none);
      Line is = after.getOrDefault(id, none);
      if (!was.text().english().equals(is.text().english()) || !was.sample().equals(is.sample())) {
        String sample = is.sample().isEmpty() ? was.sample() : is.sample();
        out.add(new Change(id, sample, was.text(), is.text(), was.report()));
      }
    }
    return out;
  }
}
