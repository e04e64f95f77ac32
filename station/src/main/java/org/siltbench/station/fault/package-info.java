/** A disk that fails on order, and the runs that prove what the ledger survives. */
@NullMarked
package org.siltbench.station.fault;

import org.jspecify.annotations.NullMarked;
