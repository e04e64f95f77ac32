/** Copies of the ledgers in another place, and a new bench made from such a copy. */
@NullMarked
package org.siltbench.station.backup;

import org.jspecify.annotations.NullMarked;
