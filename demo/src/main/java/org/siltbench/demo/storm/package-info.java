/** The invented storm on Alder Fork: what the water carried, and what became of each filter. */
@NullMarked
package org.siltbench.demo.storm;

import org.jspecify.annotations.NullMarked;
