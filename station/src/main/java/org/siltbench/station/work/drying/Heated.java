package org.siltbench.station.work.drying;

import org.siltbench.calc.method.Method;
import org.siltbench.station.life.FilterState;

/** A filter that goes through the oven, under its method. */
record Heated(FilterState state, Method method) {}
