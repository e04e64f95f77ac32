package org.siltbench.balance.learn;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.balance.format.LineFormat;

/**
 * What could be told from the lines.
 *
 * @param format the safest format that reads them, or null if none is safe
 * @param findings what was found and from what, in sentences
 * @param unknown what stays unknown, as short words with a reason
 * @param lines the captured lines as the format reads them
 */
public record Learned(
    @Nullable LineFormat format, List<String> findings, List<String> unknown, List<Line> lines) {

  /**
   * One captured line.
   *
   * @param text the line without its end
   * @param reading what the format reads from it, or null
   * @param why why it gives no reading; empty if it does
   */
  public record Line(String text, @Nullable Reading reading, String why) {}

  /** Copies. */
  public Learned {
    findings = List.copyOf(findings);
    unknown = List.copyOf(unknown);
    lines = List.copyOf(lines);
  }

  /** The same with its format under another name. */
  public Learned named(String name) {
    return format == null ? this : new Learned(format.named(name), findings, unknown, lines);
  }
}
