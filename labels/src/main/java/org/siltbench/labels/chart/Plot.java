package org.siltbench.labels.chart;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.siltbench.calc.reason.Reason;
import org.siltbench.labels.PapersSay;
import org.siltbench.labels.chart.Mark.Anchor;
import org.siltbench.labels.chart.Mark.Weight;

/** The frame of a chart: axes, ticks, and where a value lies. */
final class Plot {

  private static final double LEFT = 13;
  private static final double RIGHT = 12;
  private static final double TOP = 9;
  private static final double BOTTOM = 8;
  private static final double TICK = 1;
  private static final double SMALL = 6.4;
  private static final double MM_PER_CHARACTER = 1.22;
  private static final double LEVEL_APART = 2.5;

  private final double width;
  private final double height;
  private final Function<Reason, String> voice;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Level> levels = new ArrayList<>();
  private Scale values = new Scale(0, 1, 1, 0, 1);
  private Scale across = new Scale(0, 1, 1, 0, 1);

  Plot(Reason title, String unit, double width, double height, Function<Reason, String> voice) {
    this.width = width;
    this.voice = voice;
    this.height = height;
    words(0, 3, voice.apply(title), 8, Anchor.LEFT);
    words(LEFT - 2, TOP - 2, unit, SMALL, Anchor.RIGHT);
  }

  List<Mark> marks() {
    nameLevels();
    return List.copyOf(marks);
  }

  List<Mark> empty() {
    words(width / 2, height / 2, voice.apply(PapersSay.CHART_EMPTY.with()), SMALL, Anchor.CENTRE);
    return marks();
  }

  void valueAxis(double least, double most) {
    values = Scale.covering(least, most, height < 45 ? 4 : 6, height - BOTTOM, TOP);
    for (double tick : values.ticks()) {
      double y = values.at(tick);
      boolean zero = Math.abs(tick) < values.step() / 1e6;
      line(LEFT, y, width - RIGHT, y, zero ? Weight.RULE : Weight.HAIR);
      words(LEFT - 2, y + 0.8, values.text(tick), SMALL, Anchor.RIGHT);
    }
    line(LEFT, TOP, LEFT, height - BOTTOM, Weight.RULE);
  }

  void timeAxis(List<OffsetDateTime> sorted) {
    OffsetDateTime first = sorted.get(0);
    OffsetDateTime last = sorted.get(sorted.size() - 1);
    double margin = Math.max(60, (last.toEpochSecond() - first.toEpochSecond()) * 0.02);
    across =
        new Scale(
            first.toEpochSecond() - margin, last.toEpochSecond() + margin, 1, LEFT, width - RIGHT);
    List<OffsetDateTime> ticks = TimeTicks.between(first, last, (int) ((width - LEFT) / 16));
    for (int i = 0; i < ticks.size(); i++) {
      under(x(ticks.get(i)), TimeTicks.text(ticks.get(i), i == 0));
    }
    line(LEFT, height - BOTTOM, width - RIGHT, height - BOTTOM, Weight.RULE);
  }

  void orderAxis(int count) {
    across = new Scale(0.5, count + 0.5, 1, LEFT, width - RIGHT);
    int every = Math.max(1, (int) Math.ceil(count / 20.0));
    for (int i = 1; i <= count; i += every) {
      under(x(i), Integer.toString(i));
    }
    line(LEFT, height - BOTTOM, width - RIGHT, height - BOTTOM, Weight.RULE);
  }

  /** A lower axis of round numbers that covers all of these, zero included where it is near. */
  void acrossAxis(List<Double> all, String name) {
    double most = all.stream().mapToDouble(d -> d).max().orElse(1);
    double least = all.stream().mapToDouble(d -> d).min().orElse(0);
    boolean nearZero = least > 0 && least < most / 2;
    across = Scale.covering(nearZero ? 0 : least, most, 6, LEFT, width - RIGHT);
    for (double tick : across.ticks()) {
      under(across.at(tick), across.text(tick));
    }
    line(LEFT, height - BOTTOM, width - RIGHT, height - BOTTOM, Weight.RULE);
    words(width - RIGHT, height - 1, name, SMALL, Anchor.RIGHT);
  }

  double across(double value) {
    return across.at(value);
  }

  private void under(double x, String text) {
    line(x, height - BOTTOM, x, height - BOTTOM + TICK, Weight.RULE);
    words(x, height - BOTTOM + 3.8, text, SMALL, Anchor.CENTRE);
  }

  double x(OffsetDateTime at) {
    return across.at((double) at.toEpochSecond());
  }

  double x(int order) {
    return across.at(order);
  }

  void level(double value, PapersSay says, Weight weight, boolean dashed) {
    String name = voice.apply(says.with());
    double y = values.at(value);
    marks.add(new Mark.Line(LEFT, y, width - RIGHT, y, weight, dashed));
    levels.add(new Level(y, name));
  }

  private record Level(double y, String name) {}

  /** Names the levels at the right, from the top, none over another. */
  private void nameLevels() {
    double next = TOP;
    levels.sort(Comparator.comparingDouble(Level::y));
    for (Level level : levels) {
      double y = Math.max(level.y() + 0.8, next);
      words(width - RIGHT + 1, y, level.name(), SMALL, Anchor.LEFT);
      next = y + LEVEL_APART;
    }
    levels.clear();
  }

  void join(double x1, double value1, double x2, double value2, boolean dashed) {
    marks.add(new Mark.Line(x1, values.at(value1), x2, values.at(value2), Weight.RULE, dashed));
  }

  void bar(double x, double value, double half, double cap) {
    double top = values.at(value + half);
    double bottom = values.at(value - half);
    line(x, top, x, bottom, Weight.RULE);
    line(x - cap, top, x + cap, top, Weight.RULE);
    line(x - cap, bottom, x + cap, bottom, Weight.RULE);
  }

  void dot(double x, double value, double size, Mark.Shape shape) {
    marks.add(new Mark.Dot(x, values.at(value), size, shape));
  }

  void legend(List<String> names, Mark.Shape[] shapes, double dot) {
    double x = width - RIGHT;
    for (int i = names.size() - 1; i >= 0; i--) {
      x -= names.get(i).length() * MM_PER_CHARACTER;
      words(x, 3, names.get(i), SMALL, Anchor.LEFT);
      marks.add(new Mark.Dot(x - 1.8, 2.2, dot, shapes[i % shapes.length]));
      x -= 6;
    }
  }

  private void line(double x1, double y1, double x2, double y2, Weight weight) {
    marks.add(new Mark.Line(x1, y1, x2, y2, weight, false));
  }

  private void words(double x, double y, String text, double size, Anchor anchor) {
    marks.add(new Mark.Words(x, y, text, size, anchor));
  }
}
