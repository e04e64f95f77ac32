/** The closed list of words that qualify a result or a batch. */
@NullMarked
package org.siltbench.calc.flag;

import org.jspecify.annotations.NullMarked;
