/** Pre-weighing: clean filters, hands-free, one after the other, until each has its mass. */
@NullMarked
package org.siltbench.station.work.preweigh;

import org.jspecify.annotations.NullMarked;
