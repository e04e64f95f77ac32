package org.siltbench.demo.bench.stability;

/** Something that decides when a mass is stable. */
interface Watcher {

  /** Watches one stream from its beginning. */
  Outcome watch(Stream stream);
}
