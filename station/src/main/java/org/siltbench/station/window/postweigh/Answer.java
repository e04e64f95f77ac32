package org.siltbench.station.window.postweigh;

import java.util.Optional;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.work.postweigh.PostWeighReport;
import org.siltbench.station.work.postweigh.SeriesPicture;

/**
 * What the last weighing came to, to be shown large.
 *
 * @param filter the filter
 * @param kind its verdict
 * @param grams its mass
 * @param changeMg against the drying before, mg; empty for the first
 * @param decision true when the method's number of dryings is used up
 * @param series its masses so far
 */
record Answer(
    String filter,
    PostRow.Kind kind,
    String grams,
    Optional<String> changeMg,
    boolean decision,
    SeriesPicture series) {

  static Answer of(PostWeighReport.Done done, SeriesPicture series) {
    return new Answer(
        done.filter(),
        PostRow.Kind.valueOf(done.verdict().kind().name()),
        done.measured().grams(),
        Optional.ofNullable(done.verdict().change()).map(Mass::toMilligrams),
        done.decision(),
        series);
  }
}
