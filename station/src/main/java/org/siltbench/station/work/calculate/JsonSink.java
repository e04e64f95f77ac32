package org.siltbench.station.work.calculate;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.result.BatchReport;
import org.siltbench.calc.result.Explanation;
import org.siltbench.calc.result.ResultRow;

/** Results as one JSON document, unrounded, written as they come. */
public final class JsonSink implements Calculation.Sink {

  private final JsonGenerator json;
  private final Method method;
  private final Told told;
  private List<String> columns = List.of();

  /**
   * What is told beside the figures.
   *
   * @param compared the interval by distributions beside the first order
   * @param explained the filter whose result is written out in sentences; "all" for each; empty for
   *     none
   */
  public record Told(boolean compared, String explained) {

    /** Nothing. */
    public static final Told NOTHING = new Told(false, "");

    /** True for a filter whose result is to be written out. */
    public boolean explains(String filter) {
      return explained.equals("all") || (!explained.isEmpty() && explained.equals(filter));
    }
  }

  /** A document; the writer is not closed here. */
  public JsonSink(Writer out, Method method, Told told) throws IOException {
    this.json = new JsonFactory().createGenerator(out);
    this.method = method;
    this.told = told;
    json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
  }

  @Override
  public void begin(List<String> names) throws IOException {
    columns = names;
    json.writeStartObject();
    json.writeStringField("method", method.key());
    json.writeArrayFieldStart("rows");
  }

  @Override
  public void row(List<String> cells, ResultRow result) throws IOException {
    Map<String, @Nullable Object> calculated = ResultColumns.exact(result);
    if (told.compared()) {
      calculated.put("by_distributions", TwoWayColumns.exact(result));
    }
    if (told.explains(result.input().filter())) {
      calculated.put("explanation", Explanation.of(result, method));
    }
    json.writeStartObject();
    for (int i = 0; i < columns.size(); i++) {
      if (!columns.get(i).isEmpty() && !calculated.containsKey(columns.get(i))) {
        json.writeStringField(columns.get(i), cells.get(i));
      }
    }
    for (Map.Entry<String, @Nullable Object> field : calculated.entrySet()) {
      json.writeFieldName(field.getKey());
      value(field.getValue());
    }
    json.writeEndObject();
  }

  private void value(@Nullable Object value) throws IOException {
    if (value == null) {
      json.writeNull();
    } else if (value instanceof Double number) {
      json.writeNumber(number);
    } else if (value instanceof BigDecimal number) {
      json.writeNumber(number.scale() < 0 ? number.setScale(0) : number);
    } else if (value instanceof Number number) {
      json.writeNumber(number.longValue());
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else if (value instanceof List<?> list) {
      json.writeStartArray();
      for (Object item : list) {
        value(item);
      }
      json.writeEndArray();
    } else if (value instanceof Map<?, ?> map) {
      json.writeStartObject();
      for (Map.Entry<?, ?> member : map.entrySet()) {
        json.writeFieldName(String.valueOf(member.getKey()));
        value(member.getValue());
      }
      json.writeEndObject();
    } else {
      json.writeString(value.toString());
    }
  }

  @Override
  public void end(BatchReport report) throws IOException {
    json.writeEndArray();
    json.writeFieldName("batch_flags");
    value(report.flags().stream().map(Flag::word).toList());
    json.writeFieldName("detection");
    value(BatchDocument.detection(report));
    json.writeFieldName("analytical_days");
    value(BatchDocument.days(report));
    json.writeEndObject();
    json.writeRaw('\n');
    json.flush();
  }
}
