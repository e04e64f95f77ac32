package org.siltbench.balance.link;

import org.jspecify.annotations.Nullable;

/** Writes the keys of a link text; those at their default are left out. */
final class KeyPrinter {

  private final StringBuilder out;
  private char separator = '?';

  KeyPrinter(String head) {
    out = new StringBuilder(head);
  }

  KeyPrinter put(String key, @Nullable String value) {
    if (value != null) {
      out.append(separator).append(key).append('=').append(Percent.encode(value));
      separator = '&';
    }
    return this;
  }

  private KeyPrinter put(String key, String value, String usual) {
    return put(key, value.equals(usual) ? null : value);
  }

  KeyPrinter line(LineSettings line) {
    LineSettings d = LineSettings.DEFAULT;
    return put("baud", Integer.toString(line.baud()), Integer.toString(d.baud()))
        .put("bits", Integer.toString(line.bits()), Integer.toString(d.bits()))
        .put("parity", line.parity().word(), d.parity().word())
        .put("stop", line.stop().word(), d.stop().word());
  }

  KeyPrinter options(SpecOptions o) {
    return put("format", o.format())
        .put("unit", o.unit())
        .put("ask", o.ask())
        .put("every", o.every().toMillis() + "ms", SpecOptions.EVERY.toMillis() + "ms")
        .put("speed", o.speed() == null ? null : o.speed().toString());
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
