package org.siltbench.balance;

import java.io.IOException;
import java.nio.file.Path;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.practice.PracticeSetup;
import org.siltbench.balance.practice.PracticeSource;

/** The way in: from a link text to running readings. */
public final class Balances {

  private final Timebase time;
  private final Path formats;

  /**
   * Balances on the given clock.
   *
   * @param formats the folder where saved line formats lie; it need not exist
   */
  public Balances(Timebase time, Path formats) {
    this.time = time;
    this.formats = formats;
  }

  /**
   * Opens what a link text names. For {@link LinkSpec.Practice} the source is a {@link
   * PracticeSource}, which has the hand and the simulated clock.
   *
   * @throws BalanceException if it cannot be reached, with a message for the person
   */
  @SuppressWarnings("DoNotCallSuggester") // the links behind it land next
  public ReadingSource open(LinkSpec spec) throws IOException {
    throw new BalanceException("not there yet: " + spec + formats + time, "wait");
  }

  /** Opens a practice balance in this process with its room, way and clock chosen. */
  @SuppressWarnings("DoNotCallSuggester") // the simulation behind it lands next
  public PracticeSource practice(PracticeSetup setup) throws IOException {
    throw new BalanceException("not there yet: " + setup, "wait");
  }
}
