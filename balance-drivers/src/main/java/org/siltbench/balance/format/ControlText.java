package org.siltbench.balance.format;

import java.util.ArrayList;
import java.util.List;
import org.siltbench.calc.reason.Unfit;

/** Text with control characters by name: {@code 'P' CR LF}. */
final class ControlText {

  private ControlText() {}

  static String parse(String value) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    while (at < value.length()) {
      if (value.charAt(at) == ' ') {
        at++;
      } else if (value.charAt(at) == '\'') {
        int end = Quoted.end(value, at);
        out.append(Quoted.unquote(value.substring(at, end)));
        at = end;
      } else {
        int end = value.indexOf(' ', at) < 0 ? value.length() : value.indexOf(' ', at);
        out.append(control(value.substring(at, end)));
        at = end;
      }
    }
    return out.toString();
  }

  private static char control(String name) {
    int control = Visible.control(name);
    if (control < 0) {
      throw new Unfit(FormatFileSays.CONTROL, name);
    }
    return (char) control;
  }

  static String print(String text) {
    List<String> out = new ArrayList<>();
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= ' ') {
        plain.append(c);
      } else {
        flush(plain, out);
        out.add(Visible.controlName(c));
      }
    }
    flush(plain, out);
    return String.join(" ", out);
  }

  private static void flush(StringBuilder plain, List<String> out) {
    if (!plain.isEmpty()) {
      out.add(Quoted.quote(plain.toString()));
      plain.setLength(0);
    }
  }
}
