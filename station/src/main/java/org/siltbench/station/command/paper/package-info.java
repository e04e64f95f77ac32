/** The commands that make papers before the trip: bag labels and field sheets. */
@NullMarked
package org.siltbench.station.command.paper;

import org.jspecify.annotations.NullMarked;
