package org.siltbench.calc.result;

import org.siltbench.calc.montecarlo.Comparison;
import org.siltbench.calc.montecarlo.Interval;

/**
 * A concentration's interval by distributions beside its first-order one (JCGM 101:2008, 8).
 *
 * @param trials how many trials
 * @param interval probabilistically symmetric, mg/L
 * @param comparison with y ± k·u, to the first digit of u
 */
public record TwoWays(int trials, Interval interval, Comparison comparison) {}
