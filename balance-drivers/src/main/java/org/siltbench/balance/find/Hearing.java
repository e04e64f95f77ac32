package org.siltbench.balance.find;

import java.util.ArrayList;
import java.util.List;

/** Judges whether bytes are lines of a balance or the noise of a wrong line setting. */
final class Hearing {

  private static final double MOST_ODD = 0.02;
  private static final int FEWEST_LINES = 2;
  private static final String CONTROLS = "\r\n\t\u0002\u0003\u0000\u0004\u001b";

  private Hearing() {}

  static int odd(String bytes) {
    int odd = 0;
    for (int i = 0; i < bytes.length(); i++) {
      char c = bytes.charAt(i);
      boolean text = (c >= ' ' && c < 0x7F) || CONTROLS.indexOf(c) >= 0 || c == 0xB5;
      odd += text ? 0 : 1;
    }
    return odd;
  }

  /** The whole lines: neither the first, which may be half, nor an unended last. */
  static List<String> lines(String bytes) {
    String[] pieces = bytes.split("[\r\n\u0003]+", -1);
    List<String> out = new ArrayList<>();
    for (int i = 1; i < pieces.length - 1; i++) {
      if (!pieces[i].isBlank()) {
        out.add(pieces[i]);
      }
    }
    return out;
  }

  static boolean readable(String bytes) {
    List<String> lines = lines(bytes);
    long withNumber = lines.stream().filter(l -> l.matches("(?s).*[0-9].*")).count();
    return odd(bytes) <= MOST_ODD * bytes.length()
        && lines.size() >= FEWEST_LINES
        && 2 * withNumber >= lines.size();
  }
}
