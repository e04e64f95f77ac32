package org.siltbench.station.register;

/**
 * Something entries are about: a filter, a batch, a lot, a drying cycle, a sample, a balance.
 *
 * @param type one of the stable words of {@link Subjects}
 * @param id the identity within the type
 */
public record Subject(String type, String id) {}
