/** Propagation of distributions and its comparison with the first-order uncertainty. */
@NullMarked
package org.siltbench.calc.montecarlo;

import org.jspecify.annotations.NullMarked;
