/** First run: a guided weighing on the practice balance, and a real balance found and learned. */
@NullMarked
package org.siltbench.station.window.connect;

import org.jspecify.annotations.NullMarked;
