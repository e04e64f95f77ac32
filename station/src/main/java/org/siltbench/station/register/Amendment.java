package org.siltbench.station.register;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.ledger.EntryRef;

/**
 * Fields that a later entry sets in an earlier one. The ledger line stays as it was written; the
 * register shows the effective data and keeps the link to the amending entry.
 *
 * @param target the entry amended
 * @param set new values by top-level field name
 */
public record Amendment(EntryRef target, Map<String, @Nullable Object> set) {}
