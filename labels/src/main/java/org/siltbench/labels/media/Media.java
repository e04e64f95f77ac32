package org.siltbench.labels.media;

import org.siltbench.labels.PaperProblem;
import org.siltbench.labels.PapersSay;

/**
 * Label stock, all lengths in millimetres from the top left corner of the page.
 *
 * @param name what a person calls it
 * @param form sheet or roll
 * @param pageWidth width of the page, or of the strip
 * @param pageHeight height of the page; on a roll the height of one row of labels
 * @param columns labels across
 * @param rows labels down; 1 on a roll
 * @param left from the page's left edge to the first label
 * @param top from the page's top edge to the first label
 * @param pitchAcross from one label's left edge to the next one's
 * @param pitchDown from one label's top edge to the next one's
 * @param labelWidth width of a label
 * @param labelHeight height of a label
 * @param corner radius of the corners
 * @param safe margin inside the label that stays empty
 * @param calibration how far the printer is off
 */
public record Media(
    String name,
    Form form,
    double pageWidth,
    double pageHeight,
    int columns,
    int rows,
    double left,
    double top,
    double pitchAcross,
    double pitchDown,
    double labelWidth,
    double labelHeight,
    double corner,
    double safe,
    Calibration calibration) {

  private static final double SLACK = 0.05;

  public Media {
    demand(columns >= 1 && rows >= 1, name, PapersSay.ONE_ROW_AND_COLUMN);
    demand(form == Form.SHEET || rows == 1, name, PapersSay.ROLL_ONE_ROW);
    demand(labelWidth >= 30 && labelHeight >= 15, name, PapersSay.LABELS_SMALL);
    demand(labelWidth <= 300 && labelHeight <= 300, name, PapersSay.LABELS_LARGE);
    demand(left >= 0 && top >= 0, name, PapersSay.NEGATIVE_MARGIN);
    demand(columns == 1 || pitchAcross >= labelWidth - SLACK, name, PapersSay.COLUMNS_OVERLAP);
    demand(rows == 1 || pitchDown >= labelHeight - SLACK, name, PapersSay.ROWS_OVERLAP);
    demand(
        left + (columns - 1) * pitchAcross + labelWidth <= pageWidth + SLACK,
        name,
        PapersSay.WIDER);
    demand(
        top + (rows - 1) * pitchDown + labelHeight <= pageHeight + SLACK, name, PapersSay.TALLER);
    demand(safe >= 0 && safe <= 5, name, PapersSay.SAFE_MARGIN);
    demand(corner >= 0 && corner <= Math.min(labelWidth, labelHeight) / 2, name, PapersSay.CORNER);
  }

  private static void demand(boolean holds, String name, PapersSay what) {
    if (!holds) {
      throw new PaperProblem(
          PapersSay.STOCK.with(name, what.with()), PapersSay.MEASURE_STOCK.with());
    }
  }

  /** A roll with one label across. */
  public static Media roll(String name, double width, double height) {
    return new Media(
        name,
        Form.ROLL,
        width,
        height,
        1,
        1,
        0,
        0,
        width,
        height,
        width,
        height,
        1,
        1,
        Calibration.NONE);
  }

  public int perPage() {
    return columns * rows;
  }

  /** Left edge of the label at a position on the page, counted from 0 along the rows. */
  public double leftOf(int position) {
    return left + (position % columns) * pitchAcross;
  }

  /** Top edge of the label at a position on the page, counted from 0 along the rows. */
  public double topOf(int position) {
    int row = position / columns;
    return top + row * pitchDown;
  }

  public Media withCalibration(Calibration next) {
    return new Media(
        name,
        form,
        pageWidth,
        pageHeight,
        columns,
        rows,
        left,
        top,
        pitchAcross,
        pitchDown,
        labelWidth,
        labelHeight,
        corner,
        safe,
        next);
  }
}
