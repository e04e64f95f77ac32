/** Post-weighing: one scanned bag after the other, each with its verdict of constant mass. */
@NullMarked
package org.siltbench.station.work.postweigh;

import org.jspecify.annotations.NullMarked;
