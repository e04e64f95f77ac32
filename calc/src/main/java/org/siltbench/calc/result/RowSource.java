package org.siltbench.calc.result;

import java.util.function.Consumer;

/** A table of rows that can be read several times, the same each time. */
@FunctionalInterface
public interface RowSource {

  /**
   * Hands each row, in order, to a reader.
   *
   * @throws InputFaults after the last row, if some could not be read; those are not handed on
   */
  void forEach(Consumer<InputRow> reader);
}
