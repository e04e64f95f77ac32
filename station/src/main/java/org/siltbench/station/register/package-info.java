/** The H2 database that answers questions; always rebuildable from the ledgers. */
@NullMarked
package org.siltbench.station.register;

import org.jspecify.annotations.NullMarked;
