/** Commands around the oven and the desiccator. */
@NullMarked
package org.siltbench.station.command.drying;

import org.jspecify.annotations.NullMarked;
