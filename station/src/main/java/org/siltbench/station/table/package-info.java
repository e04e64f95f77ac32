/**
 * Tables as text: read strictly with line and column in every message, written so that no cell is a
 * formula.
 */
@NullMarked
package org.siltbench.station.table;

import org.jspecify.annotations.NullMarked;
