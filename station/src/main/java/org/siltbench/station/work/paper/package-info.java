/** What the bench's papers say about themselves. */
@NullMarked
package org.siltbench.station.work.paper;

import org.jspecify.annotations.NullMarked;
