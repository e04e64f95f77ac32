package org.siltbench.demo.bench.stability;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The figures of a run as one JSON document, or as a table for people. */
final class Report {

  private final Run run;
  private final List<Long> seeds;
  private final long n;
  private final double seconds;

  Report(Run run, List<Long> seeds, long n, double seconds) {
    this.run = run;
    this.seeds = seeds;
    this.n = n;
    this.seconds = seconds;
  }

  String json() {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      head(json);
      json.writeObjectFieldStart("groups");
      for (Map.Entry<String, Map<String, Tally>> group : run.tallies().entrySet()) {
        json.writeObjectFieldStart(group.getKey());
        for (Map.Entry<String, Tally> watcher : group.getValue().entrySet()) {
          json.writeObjectFieldStart(watcher.getKey());
          figures(json, watcher.getValue().figures());
          json.writeEndObject();
        }
        json.writeEndObject();
      }
      json.writeEndObject();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void head(JsonGenerator json) throws IOException {
    json.writeStringField("measure", "stability");
    json.writeArrayFieldStart("seeds");
    for (long seed : seeds) {
      json.writeNumber(seed);
    }
    json.writeEndArray();
    json.writeNumberField("placements", n * seeds.size());
    json.writeNumberField("seconds", Math.round(seconds * 10) / 10.0);
    json.writeStringField("java", System.getProperty("java.vm.version", "unknown"));
    json.writeStringField("all", "placements at 5 readings a second and faster");
    json.writeArrayFieldStart("wrong_placements");
    for (String placement : run.wrong()) {
      json.writeString(placement);
    }
    json.writeEndArray();
  }

  private static void figures(JsonGenerator json, Tally.Figures figures) throws IOException {
    for (RecordComponent part : Tally.Figures.class.getRecordComponents()) {
      number(json, snake(part.getName()), value(part, figures));
    }
  }

  private static Object value(RecordComponent part, Tally.Figures figures) {
    try {
      return part.getAccessor().invoke(figures);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Infinite (never) is told as null. */
  private static void number(JsonGenerator json, String name, Object value) throws IOException {
    if (value instanceof Long whole) {
      json.writeNumberField(name, whole);
    } else if (value instanceof Double d && Double.isFinite(d)) {
      json.writeFieldName(name);
      json.writeNumber(String.format(Locale.ROOT, "%.5g", d));
    } else {
      json.writeNullField(name);
    }
  }

  private static String snake(String name) {
    return name.replaceAll("([A-Z])", "_$1")
        .toLowerCase(Locale.ROOT)
        .replace("per100k", "per_100k");
  }

  String table() {
    StringBuilder text = new StringBuilder();
    run.tallies()
        .forEach(
            (group, watchers) ->
                watchers.forEach((w, tally) -> text.append(row(group, w, tally.figures()))));
    return text.toString();
  }

  private static String row(String group, String watcher, Tally.Figures f) {
    return String.format(
        Locale.ROOT,
        "%-16s %-26s n %7d det %7d wrong %5d (%.2f/100k, <%.2f) undet %.3f (wrong %.3f) while"
            + " wrong %d/%d at first %d/%d late %d/%d refused %.4f ratio %.2f/%.2f excess %.1f/%.1f s%n",
        group,
        watcher,
        f.placements(),
        f.detectable(),
        f.wrong(),
        f.wrongPer100k(),
        f.wrongPer100kHigh(),
        f.undetectableShare(),
        f.undetectableWrongShare(),
        f.seenWhileWrongWrong(),
        f.seenWhileWrong(),
        f.seenAtFirstWrong(),
        f.seenAtFirst(),
        f.oracleLateRefused(),
        f.oracleLate(),
        f.refusedShare(),
        f.ratioMedian(),
        f.ratioP95(),
        f.excessMedian(),
        f.excessP95());
  }
}
