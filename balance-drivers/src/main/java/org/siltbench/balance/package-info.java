/**
 * From the bytes of a balance to a stable mass: the readings, the stable mass and the entry to
 * both.
 */
@NullMarked
package org.siltbench.balance;

import org.jspecify.annotations.NullMarked;
