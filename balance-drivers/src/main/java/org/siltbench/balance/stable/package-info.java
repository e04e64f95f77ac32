/** Decides when a run of readings is a stable mass, and walks the pan through a weighing. */
@NullMarked
package org.siltbench.balance.stable;

import org.jspecify.annotations.NullMarked;
