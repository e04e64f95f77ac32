/** The commands for what comes before weighing: lab, lots, batches, equipment, plans, trips. */
@NullMarked
package org.siltbench.station.command.prepare;

import org.jspecify.annotations.NullMarked;
