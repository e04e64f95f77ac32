/** Why something cannot be, as a stable code with arguments: who shows it puts it into words. */
@NullMarked
package org.siltbench.calc.reason;

import org.jspecify.annotations.NullMarked;
