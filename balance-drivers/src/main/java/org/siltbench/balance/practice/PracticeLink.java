package org.siltbench.balance.practice;

import java.io.IOException;
import java.util.EnumSet;
import java.util.Set;
import org.siltbench.balance.VirtualTime;
import org.siltbench.balance.link.Connection;
import org.siltbench.balance.link.Link;
import org.siltbench.balance.link.Pacer;

/**
 * The practice balance as a link: the next line is written only when the one before was taken, so
 * simulated time and reading go in step. Bytes stay in memory or cross a real pseudo-terminal.
 */
public final class PracticeLink implements Link {

  private final String describe;
  private final PracticeBalance balance;
  private final VirtualTime time;
  private final Pacer pacer;
  private final PracticeSetup.Via via;

  PracticeLink(
      String describe,
      PracticeBalance balance,
      VirtualTime time,
      Pacer pacer,
      PracticeSetup.Via via) {
    this.describe = describe;
    this.balance = balance;
    this.time = time;
    this.pacer = pacer;
    this.via = via;
  }

  /** The hand at this balance. */
  public Hand hand() {
    return balance;
  }

  @Override
  public Set<Capability> capabilities() {
    return EnumSet.noneOf(Capability.class);
  }

  @Override
  public String describe() {
    return describe;
  }

  @Override
  public VirtualTime time() {
    return time;
  }

  @Override
  public Connection connect() throws IOException {
    Pipe pipe = via == PracticeSetup.Via.MEMORY ? new MemoryPipe() : PtyPipe.open();
    return new StepConnection(balance, pipe, time, pacer);
  }
}
