/** The commands that connect a balance: watch it, find its line settings, learn its line format. */
@NullMarked
package org.siltbench.station.command.balance;

import org.jspecify.annotations.NullMarked;
