/** The oven and the desiccator: what is in them, what goes in, what may come out. */
@NullMarked
package org.siltbench.station.window.drying;

import org.jspecify.annotations.NullMarked;
