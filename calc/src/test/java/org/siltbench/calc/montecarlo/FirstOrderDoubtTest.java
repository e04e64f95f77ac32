package org.siltbench.calc.montecarlo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The quick look says the same as the whole one. */
class FirstOrderDoubtTest {

  /** Both bounds belong to what is not doubted; not a number is. */
  @ParameterizedTest
  @CsvSource({"0.05, 20, false", "0.0500001, 20, true", "0.05, 5, false", "0.05, 4.99, true"})
  void a_doubt_is_possible_beyond_either_bound(double relative, double dof, boolean possible) {
    assertEquals(possible, FirstOrderDoubt.isPossible(relative, dof));
    assertEquals(
        possible, !FirstOrderDoubt.of(10, 0.1, 1, relative, dof, 0).isEmpty(), "the whole look");
  }

  @ParameterizedTest
  @CsvSource({"0, Infinity", "0.01, 1000000"})
  void a_well_known_volume_and_many_observations_leave_none(double relative, double dof) {
    assertFalse(FirstOrderDoubt.isPossible(relative, dof));
  }
}
