/**
 * What the bench says to a person: a stable code with its arguments, in every language there is.
 */
@NullMarked
package org.siltbench.station.said;

import org.jspecify.annotations.NullMarked;
