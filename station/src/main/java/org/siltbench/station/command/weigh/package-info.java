/** The commands that weigh: check weights, pre-weighing, the bag audit, a loose filter. */
@NullMarked
package org.siltbench.station.command.weigh;

import org.jspecify.annotations.NullMarked;
