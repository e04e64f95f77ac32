/** A simulated balance with the physics of a real one. */
@NullMarked
package org.siltbench.balance.practice;

import org.jspecify.annotations.NullMarked;
