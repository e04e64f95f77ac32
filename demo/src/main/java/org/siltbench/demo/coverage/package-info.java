/** Does the stated uncertainty hold? Simulated samples with known truth, from byte to result. */
@NullMarked
package org.siltbench.demo.coverage;

import org.jspecify.annotations.NullMarked;
