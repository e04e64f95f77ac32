/** Charts as picture files: the marks of the one chart geometry, written as SVG and as PNG. */
@NullMarked
package org.siltbench.station.work.chart;

import org.jspecify.annotations.NullMarked;
