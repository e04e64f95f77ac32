/** Air density, buoyancy and conventional mass. */
@NullMarked
package org.siltbench.calc.air;

import org.jspecify.annotations.NullMarked;
