/** Pre-weighing: place, wait, recorded, label, next. */
@NullMarked
package org.siltbench.station.window.preweigh;

import org.jspecify.annotations.NullMarked;
