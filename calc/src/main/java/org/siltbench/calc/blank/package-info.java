/**
 * Blanks: the method's choice what they are for, their limits, and the correction with its
 * uncertainty.
 */
@NullMarked
package org.siltbench.calc.blank;

import org.jspecify.annotations.NullMarked;
