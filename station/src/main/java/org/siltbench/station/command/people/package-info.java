/** The commands that say who may work at a bench. */
@NullMarked
package org.siltbench.station.command.people;

import org.jspecify.annotations.NullMarked;
