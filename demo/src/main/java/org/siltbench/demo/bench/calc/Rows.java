package org.siltbench.demo.bench.calc;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;
import org.siltbench.calc.result.BalanceRecord;
import org.siltbench.calc.result.InputRow;
import org.siltbench.calc.result.RowRole;

/** Invented rows of a batch, the same for every measure. */
final class Rows {

  /** A balance with every part of the budget above zero. */
  static final BalanceRecord BALANCE =
      new BalanceRecord(0.08, 19, 0.1, 0.05, 2e-6, 1e-6, 0.012, 2400);

  static final Mass STEP = Mass.ofMilligrams("0.1");
  static final double VOLUME_U = 2;

  private Rows() {}

  static List<InputRow> of(int count, double volumeU) {
    Random random = new Random(7);
    List<InputRow> rows = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      Mass pre = new Mass(120_000_000L + 100_000L * random.nextInt(80));
      Mass post = pre.plus(new Mass(100_000L * (50 + random.nextInt(900))));
      rows.add(
          InputRow.of("F" + i, i % 20 == 0 ? RowRole.METHOD_BLANK : RowRole.SAMPLE)
              .pre(pre)
              .post(i % 20 == 0 ? pre.plus(new Mass(100_000L * (i % 3))) : post)
              .resolution(STEP)
              .volume(new Volume(1_000_000L * (200 + random.nextInt(300))))
              .volumeU(volumeU)
              .build());
    }
    return rows;
  }
}
