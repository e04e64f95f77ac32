package org.siltbench.balance.format;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.format.LineFormat.MarkText;

/** Lines known by a text in them; asked only about lines that carry no mass. */
final class Texts {

  private final byte[][] texts;
  private final Meaning[] meanings;

  Texts(List<MarkText> rules) {
    texts = rules.stream().map(r -> Choice.bytes(r.text())).toArray(byte[][]::new);
    meanings = rules.stream().map(MarkText::meaning).toArray(Meaning[]::new);
  }

  @Nullable Meaning find(byte[] bytes, int from, int to) {
    for (int i = 0; i < texts.length; i++) {
      if (contains(bytes, from, to, texts[i])) {
        return meanings[i];
      }
    }
    return null;
  }

  private static boolean contains(byte[] bytes, int from, int to, byte[] text) {
    for (int at = from; at + text.length <= to; at++) {
      if (Choice.startsWith(bytes, at, to, text)) {
        return true;
      }
    }
    return false;
  }
}
