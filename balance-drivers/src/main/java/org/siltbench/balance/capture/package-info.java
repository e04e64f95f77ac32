/** Records a stream of bytes with arrival times to a small text file, and reads it back. */
@NullMarked
package org.siltbench.balance.capture;

import org.jspecify.annotations.NullMarked;
