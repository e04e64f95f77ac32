/** Two ways to read the same balance lines, for the measure of the line reader. */
@NullMarked
package org.siltbench.demo.bench.parse;

import org.jspecify.annotations.NullMarked;
