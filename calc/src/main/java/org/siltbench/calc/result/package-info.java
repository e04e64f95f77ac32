/**
 * From rows of masses and volumes to concentrations with their uncertainty and flags: a whole batch
 * in a few streaming passes, in memory that does not grow with the number of rows.
 */
@NullMarked
package org.siltbench.calc.result;

import org.jspecify.annotations.NullMarked;
