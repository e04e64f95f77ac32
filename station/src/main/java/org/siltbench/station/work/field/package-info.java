/** The sheet for the field: on paper, and as a table with the receipt's columns to fill in. */
@NullMarked
package org.siltbench.station.work.field;

import org.jspecify.annotations.NullMarked;
