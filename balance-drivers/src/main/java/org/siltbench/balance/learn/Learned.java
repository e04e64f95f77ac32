package org.siltbench.balance.learn;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.calc.reason.Reason;

/**
 * What could be told from the lines.
 *
 * @param format the safest format that reads them, or null if none is safe
 * @param found what was found and from what
 * @param open what stays unknown, as short words with a reason
 * @param lines the captured lines as the format reads them
 */
public record Learned(
    @Nullable LineFormat format, List<Reason> found, List<Reason> open, List<Line> lines) {

  /**
   * One captured line.
   *
   * @param text the line without its end
   * @param reading what the format reads from it, or null
   * @param reason why it gives no reading; empty if it does
   */
  public record Line(String text, @Nullable Reading reading, Reason reason) {

    /** Why it gives no reading, in English; empty if it does. */
    public String why() {
      return reason.english();
    }
  }

  /** Copies. */
  public Learned {
    found = List.copyOf(found);
    open = List.copyOf(open);
    lines = List.copyOf(lines);
  }

  /** The same with its format under another name. */
  public Learned named(String name) {
    return format == null ? this : new Learned(format.named(name), found, open, lines);
  }

  /** What was found, in English sentences. */
  public List<String> findings() {
    return found.stream().map(Reason::english).toList();
  }

  /** What stays unknown, in English. */
  public List<String> unknown() {
    return open.stream().map(Reason::english).toList();
  }
}
