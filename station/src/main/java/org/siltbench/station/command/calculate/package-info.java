/** The commands that need no lab: the calculation on a table, and the methods. */
@NullMarked
package org.siltbench.station.command.calculate;

import org.jspecify.annotations.NullMarked;
