package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Some texts with a value each; the longest that fits wins. */
final class Choice<T> {

  private static final int SHIFT = 60;
  private static final int SLOTS = 1 << (Long.SIZE - SHIFT);
  private static final int MOST_FACTORS = 1000;
  private static final long FIRST_FACTOR = 0x9E3779B97F4A7C15L;
  private static final long STEP = 0x2545F4914F6CDD1EL;

  /** One text of many that have the same width. */
  private record Slot<T>(long word, int place, @Nullable T value) {}

  private final byte[][] texts;
  private final long[] words;
  private final long[] masks;
  private final List<T> values;
  private final int[] lengths;
  private final long factor;
  private final int width;
  private final long widthMask;
  private final Slot<T>[] slots;

  private Choice(byte[][] texts, List<T> values) {
    this.texts = texts;
    this.values = values;
    lengths = Arrays.stream(texts).mapToInt(t -> t.length).toArray();
    words = new long[texts.length];
    masks = new long[texts.length];
    for (int i = 0; i < texts.length; i++) {
      words[i] = Words.of(texts[i]);
      masks[i] = Words.mask(texts[i].length);
    }
    factor = factor();
    width = commonWidth();
    widthMask = Words.mask(width);
    slots = slots();
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // an array of what has a type of its own
  private Slot<T>[] slots() {
    Slot<T>[] all = new Slot[SLOTS];
    Arrays.fill(all, new Slot<T>(0, -1, null));
    for (int i = 0; width > 0 && i < words.length; i++) {
      all[slot(words[i])] = new Slot<>(words[i], i, values.get(i));
    }
    return all;
  }

  static <S, T> Choice<T> of(List<S> items, Function<S, String> text, Function<S, T> value) {
    List<S> sorted = new ArrayList<>(items);
    sorted.sort(Comparator.comparing((S s) -> text.apply(s).length()).reversed());
    byte[][] texts = sorted.stream().map(s -> bytes(text.apply(s))).toArray(byte[][]::new);
    return new Choice<>(texts, sorted.stream().map(value).toList());
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

  /** The place of the longest text that stands there; -1 if none does. */
  int longest(byte[] bytes, int at, int to) {
    long word = Words.at(bytes, at);
    if (width > 0) {
      return width <= to - at ? place(word) : -1;
    }
    for (int i = 0; i < masks.length; i++) {
      if ((word & masks[i]) == words[i] && fits(i, bytes, at, to)) {
        return i;
      }
    }
    return -1;
  }

  /** The value of the text, of all that have one width, that the word begins with. */
  @Nullable T begins(long word) {
    long text = word & widthMask;
    Slot<T> slot = slots[slot(text)];
    return text == slot.word ? slot.value : null;
  }

  private int place(long word) {
    long text = word & widthMask;
    Slot<T> slot = slots[slot(text)];
    return text == slot.word ? slot.place : -1;
  }

  boolean hasOneWidth() {
    return width > 0;
  }

  private int slot(long word) {
    return (int) ((word * factor) >>> SHIFT);
  }

  /** A factor that gives each text a place of its own in a small table; 0 if none was found. */
  private long factor() {
    for (long candidate = FIRST_FACTOR, i = 0; i < MOST_FACTORS; i++, candidate += STEP) {
      long tried = candidate;
      long places =
          Arrays.stream(words).mapToInt(w -> (int) ((w * tried) >>> SHIFT)).distinct().count();
      if (places == words.length) {
        return tried;
      }
    }
    return 0;
  }

  /** Texts of one width need no search: which one it may be is looked up, without a branch. */
  private int commonWidth() {
    boolean one = lengths.length > 0 && Arrays.stream(lengths).distinct().count() == 1;
    return one && lengths[0] > 0 && lengths[0] <= Long.BYTES && factor != 0 ? lengths[0] : 0;
  }

  private boolean fits(int i, byte[] bytes, int at, int to) {
    int length = lengths[i];
    return length <= to - at && (length <= Long.BYTES || startsWith(bytes, at, to, texts[i]));
  }

  /** Whether no text is empty or begins with one of these characters. */
  boolean noneBeginsWith(String characters) {
    return Arrays.stream(texts)
        .noneMatch(t -> t.length == 0 || characters.indexOf(t[0] & 0xFF) >= 0);
  }

  /** The values in the order of the places that {@link #longest} answers. */
  List<T> values() {
    return values;
  }

  int length(int index) {
    return lengths[index];
  }
}
