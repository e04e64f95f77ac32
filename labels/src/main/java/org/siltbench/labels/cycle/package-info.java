/** The drying-cycle card for the oven door. */
@NullMarked
package org.siltbench.labels.cycle;

import org.jspecify.annotations.NullMarked;
