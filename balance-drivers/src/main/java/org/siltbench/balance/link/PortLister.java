package org.siltbench.balance.link;

import java.util.List;
import java.util.Optional;
import org.siltbench.balance.link.PortIdentity.Listed;

/** Tells which USB adapters are in now, and under which names. */
interface PortLister {

  /** All of them. */
  List<Listed> listed();

  /** The one at a path; nothing if what stands there is no USB adapter. */
  Optional<PortIdentity> at(String path);
}
