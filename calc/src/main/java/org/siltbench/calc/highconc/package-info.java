/** High concentrations: mass ratio, the volume the sediment takes, dissolved solids, settling. */
@NullMarked
package org.siltbench.calc.highconc;

import org.jspecify.annotations.NullMarked;
