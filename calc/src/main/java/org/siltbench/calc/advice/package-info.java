/** Advice before the trip: how many filters, how much water, what can be reported. */
@NullMarked
package org.siltbench.calc.advice;

import org.jspecify.annotations.NullMarked;
