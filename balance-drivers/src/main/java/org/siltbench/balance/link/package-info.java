/** Byte links to a balance: serial, TCP, replay, practice; and the text that names one. */
@NullMarked
package org.siltbench.balance.link;

import org.jspecify.annotations.NullMarked;
