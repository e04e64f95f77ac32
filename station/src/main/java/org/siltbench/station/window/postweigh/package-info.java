/** Post-weighing: scan, weigh, verdict. */
@NullMarked
package org.siltbench.station.window.postweigh;

import org.jspecify.annotations.NullMarked;
