/** How many filters, blanks, duplicates and spares a trip asks for, and which volumes. */
@NullMarked
package org.siltbench.station.work.plan;

import org.jspecify.annotations.NullMarked;
