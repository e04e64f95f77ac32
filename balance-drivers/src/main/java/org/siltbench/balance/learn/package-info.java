/** Infers a line format from captured lines and says how it came to it. */
@NullMarked
package org.siltbench.balance.learn;

import org.jspecify.annotations.NullMarked;
