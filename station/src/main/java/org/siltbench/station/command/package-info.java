/** The command line: finds the command, opens the lab for it, and tells the person how it ended. */
@NullMarked
package org.siltbench.station.command;

import org.jspecify.annotations.NullMarked;
