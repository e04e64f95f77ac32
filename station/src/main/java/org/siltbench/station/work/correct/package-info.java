/** Corrections, swaps, rejections and holds: new entries with a reason; nothing is ever edited. */
@NullMarked
package org.siltbench.station.work.correct;

import org.jspecify.annotations.NullMarked;
