package org.siltbench.calc.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.Methods;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;

/** Rows made on the fly, so that nothing but the calculation can hold memory. */
final class ManyRowsTest {

  private static RowSource rows(int count) {
    return reader -> {
      for (int i = 0; i < count; i++) {
        reader.accept(
            InputRow.of("F" + i, i % 20 == 0 ? RowRole.METHOD_BLANK : RowRole.SAMPLE)
                .line(i + 2)
                .sample("S" + (i < 10 ? i / 2 : i))
                .pre(new Mass(100_000_000L))
                .post(new Mass(100_000_000L + 10_000L * (i % 5000)))
                .resolution(new Mass(100_000))
                .volume(new Volume(500_000_000L))
                .build());
      }
    };
  }

  private static double sum(Method method, int count) {
    double[] sum = {0, 0};
    BatchReport report =
        new BatchCalculation(method)
            .run(
                rows(count),
                row -> {
                  Concentration c = row.concentration();
                  sum[0] += c == null ? Double.NaN : c.expanded();
                  sum[1]++;
                });
    assertEquals(count, report.rows());
    assertEquals(count, sum[1]);
    return sum[0];
  }

  @Test
  void a_few_hundred_thousand_rows_pass_through() {
    assertTrue(sum(Methods.presets().get("sm-2540d-23"), 250_000) > 0);
  }

  @Test
  @Tag("long")
  void ten_million_rows_leave_the_heap_flat() {
    Method method = Methods.presets().get("sm-2540d-23");
    long used = 0;
    for (int count : List.of(100_000, 10_000_000)) {
      assertTrue(sum(method, count) > 0);
      System.gc();
      long now = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
      assertTrue(used == 0 || now < used + 50_000_000, used + " -> " + now);
      used = now;
    }
    assertTrue(Runtime.getRuntime().totalMemory() < 2_000_000_000L);
  }
}
