/**
 * From concentration to load: a discharge series held against the samples of a batch or a table,
 * with its gaps, rating curves and loop.
 */
@NullMarked
package org.siltbench.station.work.load;

import org.jspecify.annotations.NullMarked;
