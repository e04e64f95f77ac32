package org.siltbench.station.work.postweigh;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.siltbench.calc.method.Method;
import org.siltbench.station.Problem;
import org.siltbench.station.life.About;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.method.MethodBook;

/** What a post-weighing is set up with: whose filters, and under the strictest of their methods. */
public final class Strictest {

  private Strictest() {}

  /**
   * The method that allows the least moisture, of the batch or of all that waits to be weighed.
   *
   * @throws Problem.Refused if nothing waits
   */
  public static Method method(RegisterView register, MethodBook methods, Optional<String> batch) {
    return keys(register, batch)
        .map(key -> methods.inForce(register, key))
        .min(Comparator.comparing(method -> method.balance().moistureAllowance()))
        .orElseThrow(() -> new Problem.Refused(PostWeighSays.NONE_WAITING));
  }

  private static Stream<String> keys(RegisterView register, Optional<String> batch) {
    return batch.isPresent()
        ? Stream.of(Batches.require(register, batch.get()).method())
        : register.list(About.FILTER, "", Status.DRYING.code()).stream()
            .flatMap(row -> Filters.find(register, row.subject().id()).stream())
            .map(FilterState::method)
            .distinct();
  }

  /** The filters of the batch, all of which may be scanned; empty for any filter of the lab. */
  public static Optional<Set<String>> expected(RegisterView register, Optional<String> batch) {
    return batch.map(
        name ->
            Filters.ofBatch(register, Batches.require(register, name).code()).stream()
                .map(FilterState::id)
                .collect(Collectors.toSet()));
  }
}
