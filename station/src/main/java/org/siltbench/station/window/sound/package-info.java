/** What a person hears who does not look up. */
@NullMarked
package org.siltbench.station.window.sound;

import org.jspecify.annotations.NullMarked;
