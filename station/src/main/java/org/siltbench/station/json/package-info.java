/** JSON text in and out: bounded, strict about duplicates, and written the same way every time. */
@NullMarked
package org.siltbench.station.json;

import org.jspecify.annotations.NullMarked;
