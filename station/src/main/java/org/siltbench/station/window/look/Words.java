package org.siltbench.station.window.look;

import java.util.Locale;
import org.siltbench.station.life.Role;
import org.siltbench.station.life.Status;
import org.siltbench.station.window.desk.Texts;

/** The words of the trade that every screen uses alike: roles and statuses. */
public final class Words {

  private final Texts texts;

  /** The words in a language. */
  public Words(Locale locale) {
    texts = Texts.of(Words.class, locale);
  }

  /** What a filter is for. */
  public String role(Role role) {
    return texts.get("role." + role.code());
  }

  /** Where a filter is in its life. */
  public String status(Status status) {
    return texts.get("status." + status.code());
  }
}
