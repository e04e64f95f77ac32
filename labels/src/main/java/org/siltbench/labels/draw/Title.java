package org.siltbench.labels.draw;

/**
 * What a document is called and how it is kept.
 *
 * @param title its title
 * @param subject one line about its content
 * @param archival true for PDF/A-2b
 * @param tagged true for a structure that a screen reader can follow
 */
public record Title(String title, String subject, boolean archival, boolean tagged) {}
