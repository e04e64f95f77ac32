package org.siltbench.balance.format;

/** Text with its control characters made visible. */
public final class Visible {

  private static final String[] CONTROLS = {
    "NUL", "SOH", "STX", "ETX", "EOT", "ENQ", "ACK", "BEL", "BS", "TAB", "LF", "VT", "FF", "CR",
    "SO", "SI", "DLE", "DC1", "DC2", "DC3", "DC4", "NAK", "SYN", "ETB", "CAN", "EM", "SUB", "ESC",
    "FS", "GS", "RS", "US"
  };

  private Visible() {}

  /** Control characters as {@code <CR>}, others beyond ASCII as {@code <B5>}. */
  public static String show(String text) {
    StringBuilder out = new StringBuilder(text.length() + 8);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < CONTROLS.length) {
        out.append('<').append(CONTROLS[c]).append('>');
      } else if (c < 0x7F) {
        out.append(c);
      } else {
        out.append('<').append(c == 0x7F ? "DEL" : Integer.toHexString(c)).append('>');
      }
    }
    return out.toString();
  }

  static String shorten(String text, int length) {
    String shown = text.length() > length ? text.substring(0, length) + "…" : text;
    return '"' + show(shown).replace("<2026>", "…") + '"';
  }

  static String quote(String text) {
    return '\'' + show(text) + '\'';
  }

  /** The number of a control character's name, or -1. */
  static int control(String name) {
    for (int i = 0; i < CONTROLS.length; i++) {
      if (CONTROLS[i].equals(name)) {
        return i;
      }
    }
    return -1;
  }

  /** The name of a control character. */
  static String controlName(char control) {
    return CONTROLS[control];
  }
}
