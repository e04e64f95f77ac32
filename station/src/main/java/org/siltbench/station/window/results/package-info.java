/**
 * Results of a batch: table, chart over time, blanks and duplicates, load, and files that leave.
 */
@NullMarked
package org.siltbench.station.window.results;

import org.jspecify.annotations.NullMarked;
