/** Returned bags and samples: a box gone through, bag by bag, before it is taken in. */
@NullMarked
package org.siltbench.station.window.receipt;

import org.jspecify.annotations.NullMarked;
