/** Exchanges ledger lines with the lab's database server; nothing waits for it. */
@NullMarked
package org.siltbench.station.share;

import org.jspecify.annotations.NullMarked;
