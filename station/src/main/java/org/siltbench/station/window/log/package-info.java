/** The log and its corrections: every entry readable, every change looked at before it is done. */
@NullMarked
package org.siltbench.station.window.log;

import org.jspecify.annotations.NullMarked;
