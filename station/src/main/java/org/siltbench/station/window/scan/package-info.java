/** Scans from a keyboard-wedge scanner, wherever the focus is. */
@NullMarked
package org.siltbench.station.window.scan;

import org.jspecify.annotations.NullMarked;
