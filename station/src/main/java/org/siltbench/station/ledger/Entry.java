package org.siltbench.station.ledger;

import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One entry of a ledger, as read.
 *
 * @param v version of the entry's outer form
 * @param ref bench and place
 * @param at wall time with offset: data, never order
 * @param hlc order across benches
 * @param by the operator
 * @param kind stable short word
 * @param kv version of the kind
 * @param must whether an unknown kind stops writing
 * @param data the content, in file order
 */
public record Entry(
    int v,
    EntryRef ref,
    OffsetDateTime at,
    Hlc hlc,
    String by,
    String kind,
    int kv,
    boolean must,
    Map<String, @Nullable Object> data) {

  /** Keeps the order of the fields. */
  public Entry {
    data = Collections.unmodifiableMap(new LinkedHashMap<>(data));
  }

  /** This entry with other content. */
  public Entry with(Map<String, @Nullable Object> other) {
    return new Entry(v, ref, at, hlc, by, kind, kv, must, other);
  }
}
