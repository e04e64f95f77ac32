/** The life of a filter: statuses, acts, and the one table that says what may follow what. */
@NullMarked
package org.siltbench.station.life;

import org.jspecify.annotations.NullMarked;
