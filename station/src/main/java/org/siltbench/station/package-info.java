/** The bench: what it remembers, the work done at it, its commands and its window. */
@NullMarked
package org.siltbench.station;

import org.jspecify.annotations.NullMarked;
