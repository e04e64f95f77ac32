/** Releasing results: a report gets its number, and changes from then on only by an amended one. */
@NullMarked
package org.siltbench.station.work.release;

import org.jspecify.annotations.NullMarked;
