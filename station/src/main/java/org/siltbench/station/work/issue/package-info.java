/** Bags out to a trip, unused ones back to stock, and every hand they pass through. */
@NullMarked
package org.siltbench.station.work.issue;

import org.jspecify.annotations.NullMarked;
