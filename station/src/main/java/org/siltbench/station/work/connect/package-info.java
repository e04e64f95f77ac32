/** Connects a balance: looks for its port, learns its line format, and shows the evidence. */
@NullMarked
package org.siltbench.station.work.connect;

import org.jspecify.annotations.NullMarked;
