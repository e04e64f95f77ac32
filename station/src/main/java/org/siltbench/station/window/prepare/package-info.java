/** Before the trip: lots, the plan, batches, labels and sheets, the issue, the bag audit. */
@NullMarked
package org.siltbench.station.window.prepare;

import org.jspecify.annotations.NullMarked;
