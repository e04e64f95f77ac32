/** Exact fixed-point quantities: mass in nanograms and volume in nanolitres. */
@NullMarked
package org.siltbench.calc.quantity;

import org.jspecify.annotations.NullMarked;
