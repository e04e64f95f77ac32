/** The words that qualify a result, explained in the language of the window. */
@NullMarked
package org.siltbench.station.window.flag;

import org.jspecify.annotations.NullMarked;
