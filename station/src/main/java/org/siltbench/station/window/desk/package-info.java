/**
 * What every screen's model works with: the lab, who is there, notices, scans, the balance. No
 * nodes.
 */
@NullMarked
package org.siltbench.station.window.desk;

import org.jspecify.annotations.NullMarked;
