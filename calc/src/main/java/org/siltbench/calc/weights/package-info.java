/**
 * Check weights: class limits, acceptance, the check of a balance and drift between certificates.
 */
@NullMarked
package org.siltbench.calc.weights;

import org.jspecify.annotations.NullMarked;
