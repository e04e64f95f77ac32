package org.siltbench.station.work.exchange;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * How a file would be read: nothing is recorded yet.
 *
 * @param file the file
 * @param charset its character set
 * @param separator what parts its cells
 * @param headings its columns and what they are taken for
 * @param notes what was read otherwise than it stands, and what was left out
 * @param doubts what must be settled first
 * @param rows the lines to take in
 * @param answers what was settled, now or an earlier time
 */
public record Preview(
    Path file,
    String charset,
    String separator,
    List<Heading> headings,
    List<org.siltbench.station.said.Words> notes,
    List<Doubt> doubts,
    List<Line> rows,
    Answers answers) {

  /** Copies the lists. */
  public Preview {
    headings = List.copyOf(headings);
    notes = List.copyOf(notes);
    doubts = List.copyOf(doubts);
    rows = List.copyOf(rows);
  }

  /**
   * One line as it would be taken in.
   *
   * @param line the line of the file
   * @param cells columns of the receipt table and their values
   * @param was what stood in the file, for values that are written otherwise there
   */
  public record Line(long line, Map<String, String> cells, Map<String, String> was) {}

  /** The receipt table, each line at its own place, so that messages name the file's lines. */
  public String table() {
    return AlignedTable.of(rows);
  }
}
