package org.siltbench.station.work.exchange;

import java.nio.charset.Charset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.siltbench.station.Problem;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/**
 * What a person has settled about a file: {@code charset}, {@code separator}, {@code dates}, {@code
 * decimals}, {@code skip}, {@code unit:COLUMN}, and {@code COLUMN} for the meaning of a column.
 *
 * @param given keys in lower case and their values
 */
public record Answers(Map<String, String> given) {

  /** Nothing settled. */
  public static final Answers NONE = new Answers(Map.of());

  private static final Map<String, Set<String>> WORDS =
      Map.of(
          "dates", Set.of("day-first", "month-first", "year-first"),
          "decimals", Set.of("comma", "point"),
          "separator", Set.of("comma", "semicolon", "tab", "bar"));

  /** Copies them in order of the keys. */
  public Answers {
    given = Map.copyOf(new TreeMap<>(given));
  }

  /** Reads answers such as {@code dates=day-first}. */
  public static Answers parse(List<String> words) {
    Map<String, String> given = new LinkedHashMap<>();
    for (String word : words) {
      int at = word.lastIndexOf('=');
      if (at < 1 || at == word.length() - 1) {
        throw wrong(word, Said.of(ExchangeSays.HOW_KEY));
      }
      String key = key(word.substring(0, at));
      String value = word.substring(at + 1).strip();
      check(word, key, value);
      given.merge(key, value, (a, b) -> key.equals("skip") ? a + "," + b : b);
    }
    return new Answers(given);
  }

  private static void check(String word, String key, String value) {
    Set<String> words = WORDS.get(key);
    if (words != null && !words.contains(value)) {
      throw wrong(
          word,
          Said.of(ExchangeSays.HOW_WORDS, String.join(", ", words.stream().sorted().toList())));
    }
    if (key.equals("charset") && !isCharset(value)) {
      throw wrong(word, Said.of(ExchangeSays.HOW_CHARSET));
    }
    if (key.equals("skip") && !value.matches("\\d+(,\\d+)*")) {
      throw wrong(word, Said.of(ExchangeSays.HOW_SKIP));
    }
    if (words == null && !Set.of("charset", "skip").contains(key)) {
      Columns.check(word, key, value);
    }
  }

  private static boolean isCharset(String name) {
    try {
      return Charset.isSupported(name);
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  static Problem.WrongUse wrong(String word, Words next) {
    return new Problem.WrongUse(ExchangeSays.ANSWER, word, next);
  }

  private static String key(String raw) {
    String key = raw.strip().toLowerCase(Locale.ROOT);
    return key.startsWith("unit:") ? "unit:" + key.substring(5).strip() : key;
  }

  Optional<String> of(String key) {
    return Optional.ofNullable(given.get(key(key)));
  }

  boolean skips(long line) {
    return List.of(of("skip").orElse("").split(",")).contains(Long.toString(line));
  }

  /** These, and the other ones where these say nothing. */
  public Answers over(Answers older) {
    Map<String, String> all = new LinkedHashMap<>(older.given);
    all.putAll(given);
    return new Answers(all);
  }

  /** Without what belongs to one file only. */
  Answers lasting() {
    Map<String, String> all = new LinkedHashMap<>(given);
    all.remove("skip");
    return new Answers(all);
  }
}
