package org.siltbench.balance.link;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;

/** Percent-encoding as in URLs (RFC 3986); a plus sign is a plus sign. */
final class Percent {

  private static final String PLAIN = "-._~/:+,@'()*!$;=";

  private Percent() {}

  static String decode(String text) {
    return URLDecoder.decode(text.replace("+", "%2B"), StandardCharsets.UTF_8);
  }

  static String encode(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (byte b : text.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (b & 0xFF);
      if (isPlain(c)) {
        out.append(c);
      } else {
        out.append('%').append(hex(c >> 4)).append(hex(c & 0xF));
      }
    }
    return out.toString();
  }

  private static boolean isPlain(char c) {
    boolean letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    boolean digit = c >= '0' && c <= '9';
    return letter || digit || PLAIN.indexOf(c) >= 0;
  }

  private static char hex(int digit) {
    return "0123456789ABCDEF".charAt(digit);
  }
}
