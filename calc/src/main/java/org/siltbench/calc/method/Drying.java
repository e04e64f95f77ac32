package org.siltbench.calc.method;

/**
 * Oven and desiccator.
 *
 * @param celsius the oven's temperature range, °C
 * @param firstMinutes the least time of the first drying, minutes
 * @param laterMinutes the least time of each later drying, minutes
 * @param coolMinutes the least time in the desiccator before a weighing, minutes
 * @param usefulMinutes the longest time in the desiccator before a weighing, minutes
 */
public record Drying(
    Span celsius,
    double firstMinutes,
    double laterMinutes,
    double coolMinutes,
    double usefulMinutes) {}
