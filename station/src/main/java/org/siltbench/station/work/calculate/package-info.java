/**
 * The calculation alone: a table of masses and volumes in, the same table with results out,
 * streamed.
 */
@NullMarked
package org.siltbench.station.work.calculate;

import org.jspecify.annotations.NullMarked;
