package org.siltbench.station.register;

/**
 * The folded state of one subject, kept for lists.
 *
 * @param subject what it is about
 * @param parent the id of what it belongs to (a filter's batch), or empty
 * @param status its status word, or empty
 * @param summary canonical JSON of what lists show; a pure function of the subject's history
 */
public record StateRow(Subject subject, String parent, String status, String summary) {}
