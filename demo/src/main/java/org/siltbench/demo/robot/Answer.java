package org.siltbench.demo.robot;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What one command answered.
 *
 * @param words the command line
 * @param status its exit status
 * @param document the JSON document on standard output, or null if there was none
 * @param messages lines on standard error that are no events
 */
public record Answer(
    List<String> words, int status, @Nullable Object document, List<String> messages) {

  /** Copies the lists. */
  public Answer {
    words = List.copyOf(words);
    messages = List.copyOf(messages);
  }

  /** Answers this if the command did what it was asked, else throws with all it said. */
  public Answer done() {
    return ended(0);
  }

  /** Answers this if the command ended so, else throws with all it said. */
  public Answer ended(int expected) {
    if (status != expected) {
      throw new IllegalStateException(
          "siltbench "
              + String.join(" ", words)
              + " ended with "
              + status
              + ", not "
              + expected
              + ": "
              + String.join(" | ", messages));
    }
    return this;
  }

  /** The document, which is an object. */
  public Map<?, ?> object() {
    if (document instanceof Map<?, ?> map) {
      return map;
    }
    throw new IllegalStateException("no JSON object from siltbench " + String.join(" ", words));
  }

  /** The objects of a list in the document. */
  public List<Map<?, ?>> rows(String name) {
    return objects(object().get(name));
  }

  /** A list of objects. */
  public static List<Map<?, ?>> objects(@Nullable Object list) {
    List<Map<?, ?>> rows = new ArrayList<>();
    if (list instanceof List<?> items) {
      for (Object item : items) {
        if (item instanceof Map<?, ?> row) {
          rows.add(row);
        }
      }
    }
    return rows;
  }

  /** A list of texts. */
  public static List<String> texts(@Nullable Object list) {
    return list instanceof List<?> items ? items.stream().map(String::valueOf).toList() : List.of();
  }

  /** A text field of an object; empty where it is missing. */
  public static String text(Map<?, ?> row, String field) {
    Object value = row.get(field);
    return value == null ? "" : value.toString();
  }
}
