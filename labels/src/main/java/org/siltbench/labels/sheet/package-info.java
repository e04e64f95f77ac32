/** The field sheet: the filters in order of use, room to write, the steps and the cautions. */
@NullMarked
package org.siltbench.labels.sheet;

import org.jspecify.annotations.NullMarked;
