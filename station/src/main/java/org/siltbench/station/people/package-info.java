/** Who works at the bench: initials, a PIN, a role, and signing on and off. */
@NullMarked
package org.siltbench.station.people;

import org.jspecify.annotations.NullMarked;
