/** Printing on the system's queues at the exact size, with endings that have names. */
@NullMarked
package org.siltbench.labels.print;

import org.jspecify.annotations.NullMarked;
