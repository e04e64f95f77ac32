package org.siltbench.labels.media;

/** How label stock comes. */
public enum Form {
  /** A page with a grid of labels. */
  SHEET,
  /** A strip: each row of labels is a page of its own. */
  ROLL
}
