package org.siltbench.calc.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.constant.CountingMass;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Mass;

/**
 * The two masses of a row that count.
 *
 * @param counted the post-weigh mass under the method's word
 * @param residue counted less pre-weigh, signed
 * @param postWeight the variance of the counted mass in weighings: 1, or ½ for a mean of two
 */
record Weighed(Mass counted, Mass residue, double postWeight) {

  /** The masses of a row that was checked; null where one is missing. */
  static @Nullable Weighed of(InputRow row, Method method) {
    Mass pre = row.pre();
    List<Mass> posts = row.posts();
    if (pre == null || posts.isEmpty()) {
      return null;
    }
    CountingMass counts = method.constancy().counts();
    Mass counted = posts.size() == 1 ? posts.get(0) : counts.of(posts);
    boolean mean = counts == CountingMass.MEAN_OF_PAIR && posts.size() > 1;
    return new Weighed(counted, counted.minus(pre), mean ? 0.5 : 1);
  }

  void addTo(SampleSums sums, InputRow row, Method method) {
    sums.add(row, this, method);
  }
}
