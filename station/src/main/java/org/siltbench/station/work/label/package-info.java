/** Bag labels: which masses they carry, their revisions, and the record of every print. */
@NullMarked
package org.siltbench.station.work.label;

import org.jspecify.annotations.NullMarked;
