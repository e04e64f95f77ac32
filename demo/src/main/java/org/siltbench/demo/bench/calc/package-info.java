/** Measures the calculation against plain loops of the same arithmetic in the same run. */
@NullMarked
package org.siltbench.demo.bench.calc;

import org.jspecify.annotations.NullMarked;
