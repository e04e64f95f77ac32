/** Chart geometry without a surface: the same marks are drawn on paper and on screen. */
@NullMarked
package org.siltbench.labels.chart;

import org.jspecify.annotations.NullMarked;
