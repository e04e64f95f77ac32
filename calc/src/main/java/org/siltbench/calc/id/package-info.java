/**
 * Identity of benches, batches and filters: the alphabet that keyboards leave alone, the ISO/IEC
 * 7064 check characters, the text of the bag code, and the reading of whatever a scanner or a
 * person typed.
 */
@NullMarked
package org.siltbench.calc.id;

import org.jspecify.annotations.NullMarked;
