package org.siltbench.labels;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * What every paper says about itself. All of it is given, so that the same input makes the same
 * bytes.
 *
 * @param lab the name of the lab or bench that prints
 * @param bench the bench's code
 * @param head the ledger's head hash in hexadecimal, or null where there is no ledger
 * @param entries the number of ledger entries up to the head
 * @param printed when the paper was made
 * @param practice true for a practice lab: the paper says so across every page
 * @param page the size of pages that are not label stock
 */
public record Imprint(
    String lab,
    String bench,
    @Nullable String head,
    long entries,
    OffsetDateTime printed,
    boolean practice,
    PageSize page) {

  /** The two common office pages, millimetres upright. */
  public enum PageSize {
    A4(210, 297),
    LETTER(215.9, 279.4);

    private final double width;
    private final double height;

    PageSize(double width, double height) {
      this.width = width;
      this.height = height;
    }

    public double width() {
      return width;
    }

    public double height() {
      return height;
    }
  }
}
