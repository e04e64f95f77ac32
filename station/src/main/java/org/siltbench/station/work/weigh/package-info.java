/** One weighing after the other on one balance: from readings to a stable mass, and its record. */
@NullMarked
package org.siltbench.station.work.weigh;

import org.jspecify.annotations.NullMarked;
