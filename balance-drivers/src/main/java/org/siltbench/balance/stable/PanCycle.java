package org.siltbench.balance.stable;

import java.util.List;
import org.siltbench.balance.Reading;

/**
 * Walks one pan through empty, load, settle, accept, unload. Pure: readings in, events out; no
 * thread, no clock, no I/O. One instance serves any number of loads.
 */
public interface PanCycle {

  /** Takes the next reading and says what it means; often nothing. */
  List<PanEvent> accept(Reading reading);

  /** The link was lost: whatever was on the pan must be settled anew. */
  List<PanEvent> linkLost();

  /**
   * Says when the filters now being weighed left the desiccator, on the clock of {@link
   * Reading#nanos()}. It holds until said again. Without it the time out counts from the moment a
   * load touches the pan.
   */
  void outOfDesiccatorSince(long nanos);
}
