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
import org.siltbench.calc.result.BatchReport;
import org.siltbench.calc.result.ResultRow;

/** Results as one JSON document, unrounded, written as they come. */
public final class JsonSink implements Calculation.Sink {

  private final JsonGenerator json;
  private final String method;
  private List<String> columns = List.of();

  /** A document; the writer is not closed here. */
  public JsonSink(Writer out, String method) throws IOException {
    this.json = new JsonFactory().createGenerator(out);
    this.method = method;
    json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
  }

  @Override
  public void begin(List<String> names) throws IOException {
    columns = names;
    json.writeStartObject();
    json.writeStringField("method", method);
    json.writeArrayFieldStart("rows");
  }

  @Override
  public void row(List<String> cells, ResultRow result) throws IOException {
    Map<String, @Nullable Object> calculated = ResultColumns.exact(result);
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
    } else {
      json.writeString(value.toString());
    }
  }

  @Override
  public void end(BatchReport report) throws IOException {
    json.writeEndArray();
    json.writeArrayFieldStart("batch_flags");
    for (Flag flag : report.flags()) {
      json.writeString(flag.word());
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeRaw('\n');
    json.flush();
  }
}
