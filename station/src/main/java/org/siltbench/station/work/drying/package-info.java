/**
 * Drying cycles: which filter in which dish, in and out, cooled until, useful until, and in which
 * loads.
 */
@NullMarked
package org.siltbench.station.work.drying;

import org.jspecify.annotations.NullMarked;
