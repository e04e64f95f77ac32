package org.siltbench.station.work.results;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.quantity.Volume;
import org.siltbench.calc.result.BlankLimits;
import org.siltbench.calc.result.Concentration;
import org.siltbench.calc.result.Explanation;
import org.siltbench.calc.result.InputRow;
import org.siltbench.station.life.SampleRecord;
import org.siltbench.station.life.Series;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.work.calculate.BatchDocument;
import org.siltbench.station.work.calculate.FurtherColumns;
import org.siltbench.station.work.calculate.JsonSink;
import org.siltbench.station.work.calculate.ResultColumns;
import org.siltbench.station.work.calculate.TwoWayColumns;
import org.siltbench.station.work.results.BatchResults.FilterResult;
import org.siltbench.station.work.results.Dataset.Column;

/** The rows of a batch, unrounded as JSON and rounded as a table. */
public final class ResultTable {

  private ResultTable() {}

  /** The document of the command: method, rows, flags of the batch, what has no result yet. */
  public static Map<String, @Nullable Object> document(BatchResults results) {
    return document(results, JsonSink.Told.NOTHING);
  }

  /** The same with what is told beside the figures. */
  public static Map<String, @Nullable Object> document(BatchResults results, JsonSink.Told told) {
    BlankLimits limits = BlankLimits.of(results.report());
    Map<String, @Nullable Object> document = new LinkedHashMap<>();
    document.put("method", results.method().key());
    document.put("batch", results.batch().name());
    List<Map<String, @Nullable Object>> rows = new ArrayList<>();
    for (FilterResult row : results.rows()) {
      Map<String, @Nullable Object> fields = given(row);
      fields.putAll(ResultColumns.exact(row.result()));
      fields.put("standing", standing(row, limits));
      if (told.compared()) {
        fields.put("by_distributions", TwoWayColumns.exact(row.result()));
      }
      if (told.explains(row.state().id())) {
        fields.put("explanation", Explanation.of(row.result(), results.method()));
      }
      fields.put("status", row.state().status().code());
      fields.put("report", row.state().report());
      rows.add(fields);
    }
    document.put("rows", rows);
    document.put("batch_flags", results.report().flags().stream().map(Flag::word).toList());
    document.put("detection", BatchDocument.detection(results.report()));
    document.put("analytical_days", BatchDocument.days(results.report()));
    document.put("pending", results.pending());
    return document;
  }

  /** How a result stands against the limits; null for blanks and without a concentration. */
  private static @Nullable String standing(FilterResult row, @Nullable BlankLimits limits) {
    Concentration c = row.result().concentration();
    if (c == null || !row.result().input().role().isWater()) {
      return null;
    }
    double reporting = row.result().limitMgPerL();
    if (limits == null) {
      return c.mgPerL() < reporting ? "below-reporting-limit" : "quantified";
    }
    return limits.standing(c, 1, reporting).name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static Map<String, @Nullable Object> given(FilterResult row) {
    InputRow input = row.result().input();
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("filter", input.filter());
    fields.put("role", input.role().word());
    fields.put("sample", input.sample());
    fields.put("pair", input.pair());
    fields.put("pair_kind", input.pairKind());
    fields.put("pre_g", row.state().preMass().map(Weighed::digits).orElse(""));
    List<Weighed> series = Series.onePerCycle(row.state().post());
    for (int i = 0; i < series.size(); i++) {
      fields.put("post" + (i + 1) + "_g", series.get(i).digits());
    }
    fields.put("post_g", row.state().postMass().map(Weighed::digits).orElse(""));
    fields.put(
        "volume_ml",
        row.state().record().flatMap(SampleRecord::volume).map(Volume::toMillilitres).orElse(""));
    fields.put("volume_u_ml", row.note("volume_u_ml"));
    fields.put("taken", row.note("taken"));
    fields.put("site", row.note("site"));
    fields.put("time", row.note("collected"));
    return fields;
  }

  /** The table for people. */
  static Dataset dataset(BatchResults results) {
    List<Column> columns =
        new ArrayList<>(
            List.of(
                Column.text("filter", "filter ID"),
                Column.text("role", "what the filter was for"),
                Column.text("sample", "sample number"),
                Column.text("pair", "name that two duplicates share"),
                Column.text("pair_kind", "kind of duplicate"),
                Column.text("site", "where it was collected"),
                Column.time("time", "when it was collected"),
                Column.text("taken", "aliquot or whole bottle"),
                Column.text("pre_g", "pre-weigh mass, displayed digits, g"),
                Column.text("post_g", "last post-weigh mass, displayed digits, g"),
                Column.number("volume_ml", "filtered volume, mL"),
                Column.number("volume_u_ml", "its standard uncertainty where stated, mL"),
                Column.number("residue_mg", "post less pre, signed, mg"),
                Column.number("blank_mg", "blank subtracted, mg"),
                Column.number("conc_mg_l", "concentration of the sample, rounded, mg/L"),
                Column.number("u_mg_l", "its standard uncertainty, mg/L"),
                Column.number("U_mg_l", "its expanded uncertainty, mg/L"),
                Column.text("dof", "effective degrees of freedom; inf where unlimited"),
                Column.text("constant", "constant mass: yes, no or unknown"),
                Column.text("flags", "words parted by semicolons")));
    Map<String, String> further = furtherNames(results);
    further.forEach((name, meaning) -> columns.add(Column.number(name, meaning)));
    List<List<String>> rows = new ArrayList<>();
    for (FilterResult row : results.rows()) {
      Map<String, @Nullable Object> given = given(row);
      List<String> cells = new ArrayList<>();
      for (Column column : columns.subList(0, 12)) {
        cells.add(String.valueOf(given.get(column.name())));
      }
      int digits = results.method().report().digits();
      cells.addAll(ResultColumns.rounded(row.result(), digits));
      Map<String, Double> exact = FurtherColumns.exact(row.result().further());
      further.keySet().forEach(n -> cells.add(FurtherColumns.rounded(n, exact.get(n), digits)));
      rows.add(cells);
    }
    return new Dataset("results", "Results of batch " + results.batch().name(), columns, rows);
  }

  /** The columns that any row has beside the usual ones, and what they mean. */
  private static Map<String, String> furtherNames(BatchResults results) {
    Map<String, String> out = new LinkedHashMap<>();
    for (FilterResult row : results.rows()) {
      FurtherColumns.exact(row.result().further())
          .keySet()
          .forEach(name -> out.put(name, FurtherColumns.meaning(name)));
    }
    return out;
  }
}
