/** Agreement of duplicate results. */
@NullMarked
package org.siltbench.calc.duplicates;

import org.jspecify.annotations.NullMarked;
