package org.siltbench.calc.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;

final class BatchProperties {

  private static final Method SUBTRACT =
      Tables.method("sm-2540d-23", "blank_use = subtract", "duplicate_limit_pct = 10");

  private static InputRow row(Random random, int i) {
    boolean blank = random.nextInt(5) == 0;
    InputRow.Builder row =
        InputRow.of("F" + i, blank ? RowRole.METHOD_BLANK : RowRole.SAMPLE)
            .line(i)
            .pre(new Mass(100_000_000L + 10_000L * random.nextInt(1000)))
            .resolution(new Mass(10_000))
            .volume(new Volume(1_000_000L * (100 + random.nextInt(900))));
    long residue = blank ? 10_000L * (random.nextInt(60) - 20) : 10_000L * random.nextInt(9000);
    row.post(new Mass(100_000_000L + residue));
    if (random.nextInt(3) == 0) {
      row.sample("S" + random.nextInt(4));
    }
    if (random.nextInt(3) == 0) {
      row.pair("P" + random.nextInt(4), "");
    }
    return row.build();
  }

  private static List<InputRow> rows(long seed, int count) {
    Random random = new Random(seed);
    List<InputRow> rows = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      rows.add(row(random, i));
    }
    return rows;
  }

  @Property(tries = 40)
  void the_order_of_rows_changes_no_result(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int count) {
    List<InputRow> rows = rows(seed, count);
    List<InputRow> shuffled = new ArrayList<>(rows);
    Collections.shuffle(shuffled, new Random(seed));
    Tables.Outcome one = Tables.calculate(SUBTRACT, rows);
    Tables.Outcome other = Tables.calculate(SUBTRACT, shuffled);
    assertEquals(one.report().flags(), other.report().flags());
    for (ResultRow row : one.rows()) {
      ResultRow same = other.row(row.input().filter());
      assertEquals(row.flags(), same.flags());
      assertEquals(row.residue(), same.residue());
      Concentration a = row.concentration();
      Concentration b = same.concentration();
      assertNotNull(a);
      assertNotNull(b);
      assertEquals(a.mgPerL(), b.mgPerL(), 1e-9);
      assertEquals(a.u(), b.u(), 1e-9 * a.u());
      assertEquals(a.expanded(), b.expanded(), 1e-9 * a.expanded());
    }
  }

  @Property(tries = 40)
  void tenfold_masses_and_volumes_give_the_same_concentration(
      @ForAll @IntRange(min = -100, max = 20_000) int residue,
      @ForAll @IntRange(min = 10, max = 500) int volume) {
    Method method = Tables.plain();
    double[] values = new double[2];
    for (int i = 0; i < 2; i++) {
      long scale = i == 0 ? 1 : 10;
      InputRow row =
          InputRow.of("F", RowRole.SAMPLE)
              .pre(new Mass(scale * 100_000_000L))
              .post(new Mass(scale * (100_000_000L + 10_000L * residue)))
              .volume(new Volume(scale * volume * 1_000_000L))
              .build();
      values[i] = Tables.calculate(method, List.of(row)).concentration("F").mgPerL();
    }
    assertEquals(values[0], values[1], 1e-9 * (1 + Math.abs(values[0])));
  }

  @Property(tries = 40)
  void more_residue_is_a_higher_concentration_and_more_water_a_lower_one(
      @ForAll @IntRange(min = 1, max = 20_000) int residue,
      @ForAll @IntRange(min = 10, max = 5000) int volume) {
    double base = value(residue, volume);
    assertTrue(value(residue + 1, volume) > base);
    assertTrue(volume == 5000 || value(residue, volume + 1) < base);
  }

  private static double value(int residue, int volume) {
    InputRow row =
        InputRow.of("F", RowRole.SAMPLE)
            .pre(new Mass(100_000_000L))
            .post(new Mass(100_000_000L + 10_000L * residue))
            .volume(new Volume(volume * 1_000_000L))
            .build();
    return Tables.calculate(Tables.plain(), List.of(row)).concentration("F").mgPerL();
  }

  @Property(tries = 40)
  void a_sample_over_several_filters_is_the_volume_weighted_mean_of_its_parts(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 6) int filters) {
    Random random = new Random(seed);
    List<InputRow> together = new ArrayList<>();
    double mass = 0;
    double litres = 0;
    for (int i = 0; i < filters; i++) {
      int residue = random.nextInt(5000);
      int volume = 100 + random.nextInt(500);
      together.add(
          InputRow.of("F" + i, RowRole.SAMPLE)
              .sample("S")
              .pre(new Mass(100_000_000L))
              .post(new Mass(100_000_000L + 10_000L * residue))
              .volume(new Volume(volume * 1_000_000L))
              .build());
      mass += value(residue, volume) * volume;
      litres += volume;
    }
    assertEquals(
        mass / litres,
        Tables.calculate(Tables.plain(), together).concentration("F0").mgPerL(),
        1e-9);
  }

  @Property(tries = 50)
  void an_uncertain_input_never_lowers_the_uncertainty(
      @ForAll @IntRange(min = 0, max = 20) int volumeU,
      @ForAll @IntRange(min = 0, max = 9000) int residue) {
    double before = 0;
    for (double u : new double[] {volumeU, volumeU + 1.0}) {
      InputRow row =
          InputRow.of("F", RowRole.SAMPLE)
              .pre(new Mass(100_000_000L))
              .post(new Mass(100_000_000L + 10_000L * residue))
              .volume(new Volume(500_000_000L))
              .volumeU(u)
              .build();
      double now = Tables.calculate(Tables.plain(), List.of(row)).concentration("F").u();
      assertTrue(now >= before);
      before = now;
    }
  }
}
