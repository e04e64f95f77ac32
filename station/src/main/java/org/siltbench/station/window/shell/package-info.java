/** The window itself: strip, rail, notices, and the screen in front. */
@NullMarked
package org.siltbench.station.window.shell;

import org.jspecify.annotations.NullMarked;
