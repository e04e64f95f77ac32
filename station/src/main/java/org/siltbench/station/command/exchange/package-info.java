/** The command that takes a lab's own small files in and gives them out. */
@NullMarked
package org.siltbench.station.command.exchange;

import org.jspecify.annotations.NullMarked;
