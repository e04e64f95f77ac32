/** The log sheet: every weighing as it was read, with corrections struck through. */
@NullMarked
package org.siltbench.labels.log;

import org.jspecify.annotations.NullMarked;
