package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.siltbench.calc.blank.BlankRule;

/**
 * Samples and blanks counted by the day of their analysis. Each day's samples, at most so many at a
 * time, are an analytical batch with blanks of its own: blanks of another day say nothing of it.
 */
public final class AnalyticalDays {

  private final Map<String, long[]> days = new TreeMap<>();

  /**
   * One day under one method.
   *
   * @param day the day as it was written; empty where none was given
   * @param samples filters with a role of sample
   * @param blanks of the kind the method counts
   * @param needed how many of them the method asks for
   */
  public record Day(String day, long samples, long blanks, long needed) {

    /** True if there are fewer blanks than the method asks for. */
    public boolean isShort() {
      return blanks < needed;
    }
  }

  /** Counts so many samples and blanks on a day. */
  public void add(String day, long samples, long blanks) {
    long[] counts = days.computeIfAbsent(day, d -> new long[2]);
    counts[0] += samples;
    counts[1] += blanks;
  }

  /** Adds the counts of another on days that are known here. */
  void addElsewhere(AnalyticalDays other) {
    other.days.forEach(
        (day, counts) -> {
          if (days.containsKey(day)) {
            add(day, counts[0], counts[1]);
          }
        });
  }

  /**
   * The days in order.
   *
   * @param batchSize samples in one analytical batch
   */
  List<Day> under(BlankRule rule, int batchSize) {
    List<Day> out = new ArrayList<>();
    days.forEach(
        (day, counts) ->
            out.add(new Day(day, counts[0], counts[1], rule.needed(counts[0], batchSize))));
    return List.copyOf(out);
  }
}
