/**
 * Uncertainty after the GUM (JCGM 100:2008): named parts, their correlation, effective degrees of
 * freedom, and the expanded uncertainty for a stated probability.
 */
@NullMarked
package org.siltbench.calc.uncertainty;

import org.jspecify.annotations.NullMarked;
