package org.siltbench.station.life;

/** What a filter is for: planned at preparation, decided in the field. */
public enum Role {
  SAMPLE("sample"),
  FIELD_BLANK("field-blank"),
  TRIP_BLANK("trip-blank"),
  METHOD_BLANK("method-blank"),
  CONTROL("control"),
  REFERENCE("reference"),
  SPARE("spare");

  private final String code;

  Role(String code) {
    this.code = code;
  }

  /** The stable word for disk, tables and scripts. */
  public String code() {
    return code;
  }

  /** Reads a stable word. */
  public static Role of(String code) {
    for (Role role : values()) {
      if (role.code.equals(code)) {
        return role;
      }
    }
    throw new IllegalArgumentException("not a role of a filter: " + code);
  }
}
