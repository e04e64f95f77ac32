/** Commands that correct, exchange, reject and hold. */
@NullMarked
package org.siltbench.station.command.correct;

import org.jspecify.annotations.NullMarked;
