/**
 * Bags and notes come back: the receipt table, conditions and their consequences, reconciliation.
 */
@NullMarked
package org.siltbench.station.work.receipt;

import org.jspecify.annotations.NullMarked;
