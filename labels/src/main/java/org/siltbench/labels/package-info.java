/** The four papers, drawn in millimetres. */
@NullMarked
package org.siltbench.labels;

import org.jspecify.annotations.NullMarked;
