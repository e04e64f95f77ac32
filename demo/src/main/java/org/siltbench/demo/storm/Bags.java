package org.siltbench.demo.storm;

import java.util.List;

/** Bags taken to the water, by what they were planned for. */
public record Bags(
    List<String> samples, List<String> spares, List<String> fieldBlanks, List<String> tripBlanks) {

  /** Copies the lists. */
  public Bags {
    samples = List.copyOf(samples);
    spares = List.copyOf(spares);
    fieldBlanks = List.copyOf(fieldBlanks);
    tripBlanks = List.copyOf(tripBlanks);
  }
}
