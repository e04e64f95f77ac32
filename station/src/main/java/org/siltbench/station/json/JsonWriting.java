package org.siltbench.station.json;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

final class JsonWriting {

  private final boolean sorted;
  private final StringBuilder out;

  JsonWriting(boolean sorted) {
    this(sorted, new StringBuilder(256));
  }

  JsonWriting(boolean sorted, StringBuilder out) {
    this.sorted = sorted;
    this.out = out;
  }

  String text(@Nullable Object value) {
    value(value);
    return out.toString();
  }

  void value(@Nullable Object value) {
    if (value instanceof String string) {
      string(string);
    } else if (value instanceof Map<?, ?> map) {
      object(map);
    } else if (value instanceof Collection<?> list) {
      list(list);
    } else if (isPlain(value)) {
      out.append(value);
    } else {
      throw new IllegalArgumentException("not a JSON value: " + value);
    }
  }

  /** Binary floating point is left out on purpose: decimals are BigDecimal or text. */
  private static boolean isPlain(@Nullable Object value) {
    return value == null
        || value instanceof Boolean
        || value instanceof Long
        || value instanceof Integer
        || value instanceof BigDecimal
        || value instanceof BigInteger;
  }

  private void object(Map<?, ?> map) {
    Map<?, ?> members = sorted ? new TreeMap<>(map) : map;
    char before = '{';
    for (Map.Entry<?, ?> member : members.entrySet()) {
      out.append(before);
      string((String) member.getKey());
      out.append(':');
      value(member.getValue());
      before = ',';
    }
    out.append(before == '{' ? "{}" : "}");
  }

  private void list(Collection<?> list) {
    char before = '[';
    for (Object member : list) {
      out.append(before);
      value(member);
      before = ',';
    }
    out.append(before == '[' ? "[]" : "]");
  }

  private void string(String text) {
    out.append('"');
    int done = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean plain = c >= ' ' && c < 0x7f && c != '"' && c != '\\';
      if (!plain && !(c > 0x7f && isPrintable(text, i))) {
        out.append(text, done, i);
        done = i + 1;
        escape(c);
      }
    }
    out.append(text, done, text.length()).append('"');
  }

  /** Half a surrogate pair cannot be written in UTF-8, so it is escaped as well. */
  private static boolean isPrintable(String text, int at) {
    char c = text.charAt(at);
    if (Character.isHighSurrogate(c)) {
      return at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1));
    }
    if (Character.isLowSurrogate(c)) {
      return at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
    }
    return c >= ' ' && c != 0x7f && c != 0x2028 && c != 0x2029;
  }

  private void escape(char c) {
    switch (c) {
      case '"' -> out.append("\\\"");
      case '\\' -> out.append("\\\\");
      case '\n' -> out.append("\\n");
      case '\r' -> out.append("\\r");
      case '\t' -> out.append("\\t");
      default -> out.append(String.format("\\u%04x", (int) c));
    }
  }
}
