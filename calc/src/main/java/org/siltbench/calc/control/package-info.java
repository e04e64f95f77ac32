/** Control charts for check weights and blanks. */
@NullMarked
package org.siltbench.calc.control;

import org.jspecify.annotations.NullMarked;
