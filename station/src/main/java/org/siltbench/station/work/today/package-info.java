/** What is due at the bench now: checks, weighings, receipts, dryings, results. */
@NullMarked
package org.siltbench.station.work.today;

import org.jspecify.annotations.NullMarked;
