package org.siltbench.balance.find;

import java.util.List;
import org.siltbench.balance.link.LinkSpec;

/**
 * What was heard with one line setting.
 *
 * @param spec the link text that was tried
 * @param settings the line settings in short, or empty where the link has none
 * @param bytes how many bytes came
 * @param odd how many of them no balance sends as text
 * @param lines the whole lines among them
 * @param readable true if they are lines of text with numbers
 * @param heard the bytes themselves, one character each
 */
public record Attempt(
    LinkSpec spec,
    String settings,
    int bytes,
    int odd,
    List<String> lines,
    boolean readable,
    String heard) {

  /** Copies. */
  public Attempt {
    lines = List.copyOf(lines);
  }

  /** True if nothing was heard at all. */
  public boolean isSilent() {
    return bytes == 0;
  }
}
