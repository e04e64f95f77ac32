/** The bench work: what is done at the bench, free of any window or command. */
@NullMarked
package org.siltbench.station.work;

import org.jspecify.annotations.NullMarked;
