/** The bag audit: some filters weighed again out of their sealed bags; a loose filter placed. */
@NullMarked
package org.siltbench.station.work.audit;

import org.jspecify.annotations.NullMarked;
