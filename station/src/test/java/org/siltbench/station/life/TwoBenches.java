package org.siltbench.station.life;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;
import java.util.function.BiConsumer;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.Setting;

/** Two benches on the clock of a test lab that work by chance and hear of each other by chance. */
public final class TwoBenches implements AutoCloseable {

  private final OpenLab left;
  private final OpenLab right;
  private final TestLab.HandClock clock;

  public TwoBenches(Path folder, int seed, TestLab.HandClock clock) {
    this.clock = clock;
    left = bench(folder.resolve("left"), seed);
    right = bench(folder.resolve("right"), seed + 100);
  }

  private OpenLab bench(Path place, int seed) {
    Setting setting = new Setting("AB", clock, new Random(seed), new LifeSubjects(), note -> {});
    return LabFolder.create(place, "test", false, setting);
  }

  public OpenLab left() {
    return left;
  }

  public OpenLab right() {
    return right;
  }

  /** So many steps, one in so many an exchange, the others work; in the end both know all. */
  public void work(
      Random random, int steps, Duration step, int oneIn, BiConsumer<OpenLab, Random> work) {
    for (int i = 0; i < steps; i++) {
      OpenLab here = random.nextBoolean() ? left : right;
      clock.advance(step);
      if (random.nextInt(oneIn) == 0) {
        pull(here, here == left ? right : left);
      } else {
        work.accept(here, random);
      }
    }
    pull(left, right);
    pull(right, left);
  }

  private static void pull(OpenLab to, OpenLab from) {
    long have = to.ledgers().containsKey(from.code()) ? to.ledgers().get(from.code()).seq() : 0;
    to.receive(from.code(), from.lines(from.code(), have, 1000));
  }

  @Override
  public void close() {
    left.close();
    right.close();
  }
}
