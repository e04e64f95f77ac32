/** The daily check with its control chart; the records of balance, check weights and room. */
@NullMarked
package org.siltbench.station.window.check;

import org.jspecify.annotations.NullMarked;
