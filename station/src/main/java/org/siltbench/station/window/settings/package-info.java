/** What this bench likes, room by room: balance, labels, methods, people, looks. */
@NullMarked
package org.siltbench.station.window.settings;

import org.jspecify.annotations.NullMarked;
