/** A maker's lot of filters: its record, its blank-loss test and the window its masses lie in. */
@NullMarked
package org.siltbench.station.work.lot;

import org.jspecify.annotations.NullMarked;
