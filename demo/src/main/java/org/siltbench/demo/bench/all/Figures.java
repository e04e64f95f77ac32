package org.siltbench.demo.bench.all;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;

/**
 * What one run found: one line of the history.
 *
 * @param at day and minute, with offset
 * @param revision of the sources, or the version where there is none
 * @param machine processor, cores, memory, system and Java, as told by themselves
 * @param load jobs waiting for a processor when it began, a minute's mean: a busy machine shows
 * @param figures by the claims' keys
 * @param failed measures that ended without their document, with what they said last
 */
record Figures(
    String at,
    String revision,
    String machine,
    String load,
    Map<String, BigDecimal> figures,
    Map<String, String> failed) {

  Figures {
    figures = new LinkedHashMap<>(figures);
    failed = new TreeMap<>(failed);
  }

  String line() {
    Map<String, @Nullable Object> line = new LinkedHashMap<>();
    line.put("at", at);
    line.put("revision", revision);
    line.put("machine", machine);
    line.put("load", load);
    Map<String, @Nullable Object> texts = new LinkedHashMap<>();
    figures.forEach((key, figure) -> texts.put(key, figure.toPlainString()));
    line.put("figures", texts);
    if (!failed.isEmpty()) {
      line.put("failed", new LinkedHashMap<String, @Nullable Object>(failed));
    }
    return Json.write(line);
  }

  static Figures of(String line) throws NotJson {
    Map<String, @Nullable Object> read = Json.object(line);
    Map<String, BigDecimal> figures = new LinkedHashMap<>();
    texts(read.get("figures")).forEach((key, text) -> figures.put(key, new BigDecimal(text)));
    return new Figures(
        String.valueOf(read.get("at")),
        String.valueOf(read.get("revision")),
        String.valueOf(read.get("machine")),
        String.valueOf(read.get("load")),
        figures,
        texts(read.get("failed")));
  }

  private static Map<String, String> texts(@Nullable Object object) {
    Map<String, String> texts = new LinkedHashMap<>();
    if (object instanceof Map<?, ?> map) {
      map.forEach((key, value) -> texts.put(String.valueOf(key), String.valueOf(value)));
    }
    return texts;
  }
}
