package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Some texts with a value each; the longest that fits wins. The plain way. */
final class ReferenceChoice<T> {

  private final byte[][] texts;
  private final List<T> values;

  private ReferenceChoice(byte[][] texts, List<T> values) {
    this.texts = texts;
    this.values = values;
  }

  static <S, T> ReferenceChoice<T> of(
      List<S> items, Function<S, String> text, Function<S, T> value) {
    List<S> sorted = new ArrayList<>(items);
    sorted.sort(Comparator.comparing((S s) -> text.apply(s).length()).reversed());
    byte[][] texts = sorted.stream().map(s -> bytes(text.apply(s))).toArray(byte[][]::new);
    return new ReferenceChoice<>(texts, sorted.stream().map(value).toList());
  }

  static byte[] bytes(String text) {
    return text.getBytes(ISO_8859_1);
  }

  static boolean startsWith(byte[] bytes, int at, int to, byte[] text) {
    if (to - at < text.length) {
      return false;
    }
    for (int i = 0; i < text.length; i++) {
      if (bytes[at + i] != text[i]) {
        return false;
      }
    }
    return true;
  }

  int longest(byte[] bytes, int at, int to) {
    for (int i = 0; i < texts.length; i++) {
      if (startsWith(bytes, at, to, texts[i])) {
        return i;
      }
    }
    return -1;
  }

  T value(int index) {
    return values.get(index);
  }

  int length(int index) {
    return texts[index].length;
  }

  /** The value all texts share, or null. */
  @Nullable T onlyValue() {
    return values.stream().distinct().count() == 1 ? values.get(0) : null;
  }
}
