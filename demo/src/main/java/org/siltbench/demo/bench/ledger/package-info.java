/** Measures of the ledger: what a commit costs, how fast the register answers, what faults lose. */
@NullMarked
package org.siltbench.demo.bench.ledger;

import org.jspecify.annotations.NullMarked;
