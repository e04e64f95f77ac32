package org.siltbench.calc.method;

/**
 * Loss on ignition.
 *
 * @param celsius the furnace's temperature range, °C
 * @param minutes the least time of each ignition, minutes
 */
public record Ignition(Span celsius, double minutes) {}
