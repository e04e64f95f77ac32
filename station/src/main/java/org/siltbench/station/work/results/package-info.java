/**
 * From folded filters to results: the rows of a batch, what speaks against each, and the files that
 * leave the lab.
 */
@NullMarked
package org.siltbench.station.work.results;

import org.jspecify.annotations.NullMarked;
