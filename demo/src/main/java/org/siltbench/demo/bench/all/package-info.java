/** All measures in one go, each in its own process, and the page that keeps their figures. */
@NullMarked
package org.siltbench.demo.bench.all;

import org.jspecify.annotations.NullMarked;
