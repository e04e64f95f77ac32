/**
 * The weighing log of a batch: every mass as it was read, what was corrected, and the checks around
 * it.
 */
@NullMarked
package org.siltbench.station.work.log;

import org.jspecify.annotations.NullMarked;
