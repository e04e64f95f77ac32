/**
 * What a scan of a bag means: which filter, and whether the bag and the ledger agree on its mass.
 */
@NullMarked
package org.siltbench.station.work.scan;

import org.jspecify.annotations.NullMarked;
