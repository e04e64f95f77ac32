package org.siltbench.balance.capture;

/**
 * Some bytes that arrived together.
 *
 * @param micros when, in microseconds since the capture began
 * @param text the bytes, one character each (ISO 8859-1)
 */
public record Chunk(long micros, String text) {}
