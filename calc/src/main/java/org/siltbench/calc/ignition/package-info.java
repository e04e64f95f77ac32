/** Residue split into fractions: volatile and fixed by ignition, sand and fines by sieve. */
@NullMarked
package org.siltbench.calc.ignition;

import org.jspecify.annotations.NullMarked;
