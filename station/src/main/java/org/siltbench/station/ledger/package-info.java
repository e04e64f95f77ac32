/** The append-only record of everything that happened at one bench. */
@NullMarked
package org.siltbench.station.ledger;

import org.jspecify.annotations.NullMarked;
