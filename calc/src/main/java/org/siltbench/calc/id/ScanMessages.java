package org.siltbench.calc.id;

/** The short texts for what was scanned. */
final class ScanMessages {

  private ScanMessages() {}

  static String of(Scan scan) {
    if (scan instanceof Scan.WrongCheck wrong) {
      return of(wrong);
    }
    if (scan instanceof Scan.Damaged damaged) {
      return damaged.why() + " Scan the bag again or type the ID in print.";
    }
    return scan instanceof Scan.OtherLayout other ? of(other) : "";
  }

  private static String of(Scan.WrongCheck wrong) {
    return switch (wrong.which()) {
      case FILTER_ID, BOTH ->
          "The check character does not fit: a character is wrong or two are exchanged."
              + " Scan the bag again or type the ID in print.";
      case BAG_CODE ->
          "The code on the bag is not whole; the ID in it reads "
              + (wrong.filter() == null ? "?" : wrong.filter().grouped())
              + ". Compare it with the print, then type the ID.";
    };
  }

  private static String of(Scan.OtherLayout other) {
    String first =
        "The scanner seems set to another keyboard than this computer (" + other.layout() + ").";
    return other.repaired() == null
        ? first + " Set both to the same keyboard, then scan again, or type the ID in print."
        : first + " The code could be read all the same. Set both to the same keyboard.";
  }
}
