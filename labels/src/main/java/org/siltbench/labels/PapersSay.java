package org.siltbench.labels;

import org.siltbench.calc.reason.ReasonCode;

/** What drawing and printing can say. */
public enum PapersSay implements ReasonCode {
  NOTHING(""),
  NOTHING_PRINTED("Nothing was printed."),
  NO_LABEL("There is no label to draw."),
  CHOOSE_WEIGHED("Choose filters that have a pre-weigh mass."),
  NO_FIT(
      "The {0} code and the words do not fit the label stock \"{1}\" ({2} x {3} mm) at {4} dpi."),
  LARGER_LABELS("Take larger labels or the data-matrix code."),
  CODE_FULL("The text \"{0}\" does not fit a {1} code."),
  OTHER_CODE("Choose another kind of code."),
  NO_STOCK("No label stock and no file is called \"{0}\"."),
  BUILT_IN("Built in are {0}; or give the path of a media file."),
  STOCK_LARGE("{0} is too large for a media file."),
  FEW_LINES("Give a text file of a few lines."),
  STOCK_UNREADABLE("The media file {0} could not be read."),
  CHECK_STOCK_FILE("Check that the file exists, may be read and is UTF-8 text."),
  IN_FILE("{0}: {1}."),
  MEASURE_RULER("Print the ruler page and measure again."),
  CALIBRATION("{0} is {1}; it must be {2} to {3}"),
  MOVE_RIGHT("move right"),
  MOVE_DOWN("move down"),
  SCALE_ACROSS("scale across"),
  SCALE_DOWN("scale down"),
  MILLIMETRES("{0} mm"),
  AT_LINE("{0}, line {1}, {2}."),
  NO_COLON("has no colon"),
  WRITE_KEY_VALUE("Write it as \"key: value\", for example \"label: 50 25\"."),
  UNKNOWN_KEY("has the key \"{0}\""),
  KEYS_ARE("Keys are {0}."),
  TWICE("gives \"{0}\" a second time"),
  KEEP_ONE("Keep one of the two lines."),
  NO_LINE("{0} has no line \"{1}\"."),
  ADD_ONE("Add one, for example \"{0}\"."),
  ROLL_OR("form: roll\" or \"form: sheet"),
  SAYS("says \"{0}\""),
  SAY_FORM("Say roll or sheet."),
  WHOLE_NUMBERS("needs whole numbers"),
  COLUMNS_ROWS("Say columns, then rows: \"grid: 3 8\"."),
  ONE_NUMBER("needs 1 number for \"{0}\""),
  SEVERAL_NUMBERS("needs {1} numbers for \"{0}\""),
  PART_NUMBERS("Part them with a space, use a point for decimals, leave the unit out."),
  NO_NUMBER("has \"{0}\" where a number in millimetres belongs"),
  USE_DIGITS("Use digits and a point, for example 25.4."),
  STOCK("The label stock \"{0}\" {1}."),
  MEASURE_STOCK("Measure the stock again and correct its file."),
  ONE_ROW_AND_COLUMN("needs at least one row and one column"),
  ROLL_ONE_ROW("is a roll: a roll has one row"),
  LABELS_SMALL("has labels under 30 x 15 mm"),
  LABELS_LARGE("has labels over 300 mm"),
  NEGATIVE_MARGIN("has a negative margin"),
  COLUMNS_OVERLAP("has columns that overlap"),
  ROWS_OVERLAP("has rows that overlap"),
  WIDER("is wider than its page"),
  TALLER("is taller than its page"),
  SAFE_MARGIN("has a safe margin outside 0 to 5 mm"),
  CORNER("has a corner wider than half the label"),
  DPI("dots per inch must be 150 to 2400, not {0}"),
  START_AT("a page of this stock has labels 1 to {0}, not {1}"),
  NO_KIND("not a kind of code: {0}"),
  NO_QUEUE("No print queue called \"{0}\" answers."),
  NO_QUEUE_NAME("That is not the name of a queue."),
  QUEUES("Queues here: {0}."),
  NO_QUEUES("This system knows no print queue: set one up in its printer settings."),
  CHECK_PRINTER("Check the printer, then print again."),
  NO_TEMPORARY_FILE("The labels could not be written to a temporary file: {0}."),
  MAKE_ROOM("Make room on the disk, then print again."),
  NO_PRINT_COMMAND("This system has no print command."),
  PRINT_BY_HAND("Print the file by hand."),
  NEXT_OUT_OF_PAPER("Put labels in, then print again."),
  NEXT_PAUSED("Resume the queue in the system's printer settings, then print again."),
  NEXT_OFFLINE("Switch the printer on and check its cable, then print again."),
  NEXT_JAMMED("Clear the printer, then print again."),
  NEXT_REJECTING("Let the queue accept jobs in the system's printer settings."),
  NEXT_OTHER("Look at the printer's display, then print again.");

  private final String english;

  PapersSay(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
