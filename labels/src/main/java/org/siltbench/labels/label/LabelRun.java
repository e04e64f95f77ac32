package org.siltbench.labels.label;

import java.util.List;
import org.siltbench.calc.reason.Unfit;
import org.siltbench.labels.PapersSay;
import org.siltbench.labels.code.CodeKind;
import org.siltbench.labels.media.Media;

/**
 * Labels to be drawn on one kind of stock.
 *
 * @param labels in the order of printing
 * @param media the stock
 * @param kind the code they carry
 * @param dpi the printer's dots per inch: modules are whole dots of it
 * @param startAt the first free label of the first sheet, counted from 1 along the rows
 * @param slip true to follow each label by its twin for a slip inside the bag
 */
public record LabelRun(
    List<BagLabel> labels, Media media, CodeKind kind, int dpi, int startAt, boolean slip) {

  public LabelRun {
    labels = List.copyOf(labels);
    if (dpi < 150 || dpi > 2400) {
      throw new Unfit(PapersSay.DPI, dpi);
    }
    if (startAt < 1 || startAt > media.perPage()) {
      throw new Unfit(PapersSay.START_AT, media.perPage(), startAt);
    }
  }

  /** Data Matrix for a 300 dpi printer, from the first label, no slips. */
  public static LabelRun of(List<BagLabel> labels, Media media) {
    return new LabelRun(labels, media, CodeKind.DATA_MATRIX, 300, 1, false);
  }
}
