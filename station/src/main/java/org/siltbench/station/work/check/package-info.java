/** Check weights: the balance against its limit under the method, before, between and after. */
@NullMarked
package org.siltbench.station.work.check;

import org.jspecify.annotations.NullMarked;
