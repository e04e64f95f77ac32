/** The commands that prove, close, share, copy and restore a lab's ledgers. */
@NullMarked
package org.siltbench.station.command.ledger;

import org.jspecify.annotations.NullMarked;
