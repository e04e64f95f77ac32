/** The way out where a check stops the work: a supervisor says why to weigh on all the same. */
@NullMarked
package org.siltbench.station.window.override;

import org.jspecify.annotations.NullMarked;
