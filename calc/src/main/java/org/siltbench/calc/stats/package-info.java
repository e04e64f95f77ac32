/** Numerically sound statistics: mean and deviation, robust measures, Student t, least squares. */
@NullMarked
package org.siltbench.calc.stats;

import org.jspecify.annotations.NullMarked;
