/** The measurements: each has a main and prints one JSON document. */
@NullMarked
package org.siltbench.demo.bench;

import org.jspecify.annotations.NullMarked;
