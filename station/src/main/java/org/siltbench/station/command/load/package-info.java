/** The command that turns discharge and concentrations into a load. */
@NullMarked
package org.siltbench.station.command.load;

import org.jspecify.annotations.NullMarked;
