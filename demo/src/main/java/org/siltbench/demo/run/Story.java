package org.siltbench.demo.run;

/** Tells how the demo goes on. */
interface Story {

  /** A new chapter. */
  void chapter(String title);

  /** Something that happened. */
  void tell(String line);
}
