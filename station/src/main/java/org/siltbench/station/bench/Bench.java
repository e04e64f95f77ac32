package org.siltbench.station.bench;

import java.time.Clock;
import java.util.List;
import java.util.function.Function;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.register.RegisterView;

/** One opened lab folder. Safe for use by several threads; appends are made one at a time. */
public interface Bench extends AutoCloseable {

  /** This bench's 4-character code. */
  String code();

  /** True for a practice lab: its papers say so, and only it may use the practice balance. */
  boolean practice();

  /** The operator's initials for entries written from now on. */
  String operator();

  /** The clock of this bench. */
  Clock clock();

  /** Questions to the register, which holds all that this process has appended or read. */
  RegisterView register();

  /**
   * Does one act. Takes the lab's lock, reads what other processes appended, asks the rule against
   * the register of that moment, appends and forces what it answers, and releases. When this
   * returns, the entries are on the disk. The rule may throw {@link
   * org.siltbench.station.Problem.Refused}: then nothing is written.
   *
   * @return the entries written, in order
   * @throws org.siltbench.station.Problem.Outside if the disk fails; nothing is then announced
   */
  List<Entry> act(Function<RegisterView, List<Draft>> rule);

  @Override
  void close();
}
