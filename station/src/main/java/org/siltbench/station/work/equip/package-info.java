/** What the bench works with: its balances, check weights and the air of the room, on record. */
@NullMarked
package org.siltbench.station.work.equip;

import org.jspecify.annotations.NullMarked;
