/** What speaks for and against a batch's results, and their release. */
@NullMarked
package org.siltbench.station.window.quality;

import org.jspecify.annotations.NullMarked;
