package org.siltbench.station.work;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.ledger.Draft;

/** The data of an entry to be written, field by field; what is not known is left out. */
public final class Facts {

  private final Map<String, @Nullable Object> data = new LinkedHashMap<>();

  /** Adds a field. */
  public Facts put(String field, Object value) {
    data.put(field, value);
    return this;
  }

  /** Adds a field if it is known. */
  public Facts putIf(String field, @Nullable Object value) {
    if (value != null) {
      data.put(field, value);
    }
    return this;
  }

  /** Adds a decimal, as text. */
  public Facts putIf(String field, java.math.@Nullable BigDecimal value) {
    return putIf(field, value == null ? null : (Object) value.toPlainString());
  }

  /** Adds a time stated by a person, and that it was not observed; nothing for null. */
  public Facts stated(@Nullable OffsetDateTime at) {
    if (at != null) {
      data.put("observed", false);
      data.put("stated_at", time(at));
    }
    return this;
  }

  /** All fields so far; changes go through. */
  public Map<String, @Nullable Object> fields() {
    return data;
  }

  /** The entry to write. A program that does not know the kind must not write after it. */
  public Draft draft(String kind) {
    return new Draft(kind, 1, true, data);
  }

  /** A time as the ledger keeps it. */
  public static String time(OffsetDateTime at) {
    return at.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }
}
