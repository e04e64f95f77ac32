/** Batches of filters: their IDs, their roles, and how a batch is found by name or code. */
@NullMarked
package org.siltbench.station.work.batch;

import org.jspecify.annotations.NullMarked;
