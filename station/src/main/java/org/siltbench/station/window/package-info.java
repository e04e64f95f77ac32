/** The bench window: shows the bench work's state and sends its commands; it holds no rule. */
@NullMarked
package org.siltbench.station.window;

import org.jspecify.annotations.NullMarked;
