/** Looks for a balance: lists ports and tries line settings, without sending a byte. */
@NullMarked
package org.siltbench.balance.find;

import org.jspecify.annotations.NullMarked;
