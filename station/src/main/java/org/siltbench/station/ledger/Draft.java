package org.siltbench.station.ledger;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What is to be written; the ledger adds the place, the time and the hashes.
 *
 * @param kind stable short word, for example {@code weighing}
 * @param kv version of the kind
 * @param must a reader that does not know the kind must stop writing
 * @param data JSON object: strings, whole numbers, booleans, null, lists and maps of these;
 *     decimals are strings
 */
public record Draft(String kind, int kv, boolean must, Map<String, @Nullable Object> data) {

  /** Keeps the order of the fields. */
  public Draft {
    data = Collections.unmodifiableMap(new LinkedHashMap<>(data));
  }
}
