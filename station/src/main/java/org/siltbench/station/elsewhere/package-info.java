/** What the other rooms and the system say, told in the language of whoever reads it. */
@NullMarked
package org.siltbench.station.elsewhere;

import org.jspecify.annotations.NullMarked;
