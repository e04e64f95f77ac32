/** Line framing and line formats as data: from bytes to readings. */
@NullMarked
package org.siltbench.balance.format;

import org.jspecify.annotations.NullMarked;
