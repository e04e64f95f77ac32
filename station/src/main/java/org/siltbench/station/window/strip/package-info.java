/**
 * The strip that is always there: the live mass, its state, the balance, the person, the last mass.
 */
@NullMarked
package org.siltbench.station.window.strip;

import org.jspecify.annotations.NullMarked;
