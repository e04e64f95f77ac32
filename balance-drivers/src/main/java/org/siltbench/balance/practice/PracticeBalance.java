package org.siltbench.balance.practice;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.SplittableRandom;
import org.siltbench.balance.VirtualTime;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.format.LineWriter;
import org.siltbench.calc.quantity.Mass;

/**
 * The balance above the pan: averages, rounds to its step, forms its own opinion of stability and
 * writes lines at its own pace. Its time is the simulated one; a hand acts at that now.
 */
final class PracticeBalance implements Hand {

  private static final double INNER_SECONDS = 0.05;
  private static final int MARK_WINDOW = 8;
  private static final int EARLY_WINDOW = 3;

  private final Room room;
  private final PanPhysics pan;
  private final SplittableRandom random;
  private final VirtualTime time;
  private final LineWriter writer;
  private final long startNanos;
  private final Deque<Double> inner = new ArrayDeque<>();
  private final Deque<Long> shown = new ArrayDeque<>();
  private double tare;
  private long dueNanos;
  private boolean keyPressed;

  PracticeBalance(long seed, Room room, LineFormat format, VirtualTime time) {
    this.room = room;
    this.random = new SplittableRandom(seed);
    this.pan = new PanPhysics(room, random.split());
    this.time = time;
    this.writer = new LineWriter(format, room.stepMg());
    this.startNanos = time.nanos();
    this.dueNanos = startNanos;
    schedule();
  }

  private void schedule() {
    double uneven = 1 + room.jitter() * (2 * random.nextDouble() - 1);
    dueNanos += (long) (1e9 / room.perSecond() * uneven);
  }

  /** When the next line is due, on the simulated monotonic clock. */
  synchronized long dueNanos() {
    return dueNanos;
  }

  /** The line due next; simulated time moves to its moment. */
  synchronized byte[] nextLine() {
    time.advanceTo(dueNanos);
    dueNanos = Math.max(dueNanos, time.nanos());
    catchUp();
    long steps = Math.round((average() - tare) / room.stepMg());
    shown.addLast(steps);
    if (shown.size() > MARK_WINDOW) {
      shown.removeFirst();
    }
    schedule();
    return writer.line(Mass.ofMilligrams(steps * room.stepMg()), isAtRest());
  }

  /** True once for each press of the print key. */
  synchronized boolean takeKeyPress() {
    boolean pressed = keyPressed;
    keyPressed = false;
    return pressed;
  }

  private double average() {
    return inner.stream().mapToDouble(Double::doubleValue).average().orElse(0);
  }

  private boolean isAtRest() {
    int window = room.markEarly() ? EARLY_WINDOW : MARK_WINDOW;
    if (shown.size() < window) {
      return false;
    }
    long[] last = shown.stream().skip(shown.size() - window).mapToLong(Long::longValue).toArray();
    long least = Long.MAX_VALUE;
    long most = Long.MIN_VALUE;
    for (long value : last) {
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
    return most - least <= 1;
  }

  /** Brings the pan to the simulated now, sampling it as the balance does inside. */
  private void catchUp() {
    double target = (time.nanos() - startNanos) / 1e9;
    double first = target - INNER_SECONDS * (room.averaging() - 1);
    for (int i = 0; i < room.averaging(); i++) {
      pan.advanceTo(first + i * INNER_SECONDS);
      inner.addLast(pan.sample());
      if (inner.size() > room.averaging()) {
        inner.removeFirst();
      }
    }
  }

  private void toNow() {
    pan.advanceTo((time.nanos() - startNanos) / 1e9);
  }

  @Override
  public synchronized void put(Load load) {
    toNow();
    pan.put(load);
  }

  @Override
  public synchronized void takeOff() {
    toNow();
    pan.takeOff();
  }

  @Override
  public synchronized void touch() {
    toNow();
    pan.touch();
  }

  @Override
  public synchronized void openDoor() {
    toNow();
    pan.door(true);
  }

  @Override
  public synchronized void closeDoor() {
    toNow();
    pan.door(false);
  }

  @Override
  public synchronized void zero() {
    toNow();
    tare = Math.round(pan.carrier() / room.stepMg()) * room.stepMg();
  }

  @Override
  public synchronized void print() {
    keyPressed = true;
  }
}
