/**
 * The constant-mass verdict: has a filter lost all the water it will lose, and which mass counts.
 */
@NullMarked
package org.siltbench.calc.constant;

import org.jspecify.annotations.NullMarked;
