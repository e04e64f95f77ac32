/**
 * Simulated placements on a balance, whose truth is known, to measure how soon and how rightly a
 * mass is called stable. The definitions stand in docs/stability.md.
 */
@NullMarked
package org.siltbench.demo.bench.stability;

import org.jspecify.annotations.NullMarked;
