package org.siltbench.station.life;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.siltbench.station.ledger.Entry;

/**
 * A batch, folded from its history.
 *
 * @param code its code, with which its filter IDs start
 * @param name what people call it
 * @param lot the maker's lot
 * @param method the method's key
 * @param created when it was made
 * @param filters filter IDs and their planned roles, in order
 * @param trips trips it was issued to, oldest first
 * @param releases report numbers, oldest first
 */
public record BatchState(
    String code,
    String name,
    String lot,
    String method,
    OffsetDateTime created,
    Map<String, String> filters,
    List<String> trips,
    List<String> releases) {

  /** The batch; empty if it was never created. */
  public static Optional<BatchState> fold(String code, List<Entry> history) {
    return Live.entries(history)
        .filter(entry -> entry.kind().equals("batch.created"))
        .findFirst()
        .map(entry -> of(code, entry, history));
  }

  private static BatchState of(String code, Entry created, List<Entry> history) {
    Fields data = Fields.of(created);
    Map<String, String> filters = new LinkedHashMap<>();
    for (Fields row : data.rows("filters")) {
      filters.put(row.text("filter"), row.text("role"));
    }
    return new BatchState(
        code,
        data.text("name"),
        data.text("lot"),
        data.text("method"),
        created.at(),
        filters,
        words(history, "batch.issued", "trip"),
        words(history, "release", "report"));
  }

  private static List<String> words(List<Entry> history, String kind, String field) {
    List<String> out = new ArrayList<>();
    Live.entries(history)
        .filter(entry -> entry.kind().equals(kind))
        .map(entry -> Fields.of(entry).text(field))
        .filter(word -> !word.isEmpty() && !out.contains(word))
        .forEach(out::add);
    return out;
  }
}
