/** The test report: results with their uncertainty and the evidence behind them. */
@NullMarked
package org.siltbench.labels.report;

import org.jspecify.annotations.NullMarked;
