/** Machine-readable codes as module grids, laid on the printer's own dots. */
@NullMarked
package org.siltbench.labels.code;

import org.jspecify.annotations.NullMarked;
