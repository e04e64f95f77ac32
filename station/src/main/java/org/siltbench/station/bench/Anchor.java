package org.siltbench.station.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What is known, outside of a ledger, of one of its hashes: lines cut off its end show only against
 * such a thing.
 *
 * @param kind day-end, backup, server or paper
 * @param where which paper, folder or server
 * @param bench whose ledger
 * @param seq the entry; 0 where only the hash is known
 * @param head its hash, or the start of it as printed
 * @param at when it was taken, or empty
 */
public record Anchor(String kind, String where, String bench, long seq, String head, String at) {

  /** As a JSON object. */
  public Map<String, @Nullable Object> json() {
    Map<String, @Nullable Object> json = new LinkedHashMap<>();
    json.put("kind", kind);
    json.put("where", where);
    json.put("bench", bench);
    json.put("seq", seq);
    json.put("head", head);
    json.put("at", at);
    return json;
  }

  static Anchor of(Map<String, @Nullable Object> json) {
    return new Anchor(
        text(json, "kind"),
        text(json, "where"),
        text(json, "bench"),
        json.get("seq") instanceof Long seq ? seq : 0,
        text(json, "head"),
        text(json, "at"));
  }

  private static String text(Map<String, @Nullable Object> json, String name) {
    return json.get(name) instanceof String text ? text : "";
  }
}
