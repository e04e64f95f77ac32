/** How the window looks: colours, scale, state shapes, and controls made the same everywhere. */
@NullMarked
package org.siltbench.station.window.look;

import org.jspecify.annotations.NullMarked;
