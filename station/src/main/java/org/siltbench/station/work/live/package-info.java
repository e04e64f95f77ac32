/** The one owner of the balance: everybody who wants its readings hears the same live stream. */
@NullMarked
package org.siltbench.station.work.live;

import org.jspecify.annotations.NullMarked;
