/** Commands around returned bags. */
@NullMarked
package org.siltbench.station.command.receipt;

import org.jspecify.annotations.NullMarked;
