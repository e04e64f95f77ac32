/** From concentration and discharge to sediment load. */
@NullMarked
package org.siltbench.calc.load;

import org.jspecify.annotations.NullMarked;
