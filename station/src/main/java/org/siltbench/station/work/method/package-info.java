/**
 * The methods of a lab: presets and own files, and the numbers frozen when a method is first used.
 */
@NullMarked
package org.siltbench.station.work.method;

import org.jspecify.annotations.NullMarked;
