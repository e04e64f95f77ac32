package org.siltbench.station.command;

import java.util.List;
import java.util.function.Supplier;

/**
 * One command. Its class is loaded only when it is called for, so that no command pays for another.
 *
 * @param words the words that call it, one or two: {@code "methods"}, {@code "batch new"}; {@code
 *     "window"} is also what no words at all call
 * @param summary one line for the list of commands
 * @param make makes the task that picocli fills with the options
 */
public record CommandEntry(String words, String summary, Supplier<Task> make) {

  /** The words one by one. */
  List<String> path() {
    return List.of(words.split(" "));
  }

  /** The first word. */
  String group() {
    return path().get(0);
  }
}
