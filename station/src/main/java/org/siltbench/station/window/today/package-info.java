/** What is due today. */
@NullMarked
package org.siltbench.station.window.today;

import org.jspecify.annotations.NullMarked;
