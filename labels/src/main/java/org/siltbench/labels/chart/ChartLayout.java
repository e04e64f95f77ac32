package org.siltbench.labels.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.siltbench.calc.reason.Reason;
import org.siltbench.labels.PapersSay;

/** Lays charts out as marks, for any surface that can draw lines, dots and words. */
public final class ChartLayout {

  private static final Mark.Shape[] FULL = {Mark.Shape.DISC, Mark.Shape.SQUARE, Mark.Shape.DIAMOND};
  private static final Mark.Shape[] HOLLOW = {Mark.Shape.RING, Mark.Shape.FRAME, Mark.Shape.KITE};
  private static final Mark.Shape[] LOOP_ENDS = {Mark.Shape.FRAME, Mark.Shape.DIAMOND};
  private static final double DOT = 1.7;
  private static final double CAP = 0.6;

  private ChartLayout() {}

  /** The marks of a time chart in a box of the given size, millimetres. */
  public static List<Mark> of(TimeChart chart, double width, double height) {
    return of(chart, width, height, Reason::english);
  }

  /** The same with its words in another language. */
  public static List<Mark> of(
      TimeChart chart, double width, double height, Function<Reason, String> voice) {
    List<TimeChart.Point> all =
        chart.series().stream().flatMap(series -> series.points().stream()).toList();
    Plot plot = new Plot(chart.title(), chart.unit(), width, height, voice);
    if (all.isEmpty()) {
      return plot.empty();
    }
    double least = Math.min(0, all.stream().mapToDouble(p -> p.value() - p.half()).min().orElse(0));
    double most = all.stream().mapToDouble(p -> p.value() + p.half()).max().orElse(1);
    plot.valueAxis(least, most);
    plot.timeAxis(all.stream().map(TimeChart.Point::at).sorted().toList());
    for (int i = 0; i < chart.series().size(); i++) {
      series(plot, chart.series().get(i), i);
    }
    plot.legend(chart.series().stream().map(one -> name(one, voice)).toList(), FULL, DOT);
    return plot.marks();
  }

  private static String name(TimeChart.Series series, Function<Reason, String> voice) {
    return series.name().isEmpty() ? voice.apply(PapersSay.CHART_NO_SITE.with()) : series.name();
  }

  private static void series(Plot plot, TimeChart.Series series, int index) {
    List<TimeChart.Point> points = new ArrayList<>(series.points());
    points.sort(Comparator.comparing(TimeChart.Point::at));
    for (int i = 1; i < points.size(); i++) {
      TimeChart.Point a = points.get(i - 1);
      TimeChart.Point b = points.get(i);
      plot.join(plot.x(a.at()), a.value(), plot.x(b.at()), b.value(), index % 2 == 1);
    }
    for (TimeChart.Point point : points) {
      if (point.half() > 0) {
        plot.bar(plot.x(point.at()), point.value(), point.half(), CAP);
      }
    }
    for (TimeChart.Point point : points) {
      Mark.Shape shape = (point.below() ? HOLLOW : FULL)[index % FULL.length];
      plot.dot(plot.x(point.at()), point.value(), DOT, shape);
    }
  }

  /** The marks of a control chart in a box of the given size, millimetres. */
  public static List<Mark> of(ControlChart chart, double width, double height) {
    return of(chart, width, height, Reason::english);
  }

  /** The same with its words in another language. */
  public static List<Mark> of(
      ControlChart chart, double width, double height, Function<Reason, String> voice) {
    Plot plot = new Plot(chart.title(), chart.unit(), width, height, voice);
    if (chart.points().isEmpty()) {
      return plot.empty();
    }
    double most = chart.limit();
    for (ControlChart.Point point : chart.points()) {
      most = Math.max(most, Math.abs(point.value()));
    }
    plot.valueAxis(-most * 1.08, most * 1.08);
    plot.orderAxis(chart.points().size());
    limits(plot, chart);
    for (int i = 0; i < chart.points().size(); i++) {
      double value = chart.points().get(i).value();
      if (i > 0) {
        plot.join(plot.x(i), chart.points().get(i - 1).value(), plot.x(i + 1), value, false);
      }
      boolean outside = Math.abs(value) > chart.limit();
      plot.dot(plot.x(i + 1), value, DOT, outside ? Mark.Shape.FRAME : Mark.Shape.DISC);
    }
    return plot.marks();
  }

  private static void limits(Plot plot, ControlChart chart) {
    plot.level(chart.limit(), PapersSay.CHART_LIMIT, Mark.Weight.RULE, false);
    plot.level(-chart.limit(), PapersSay.CHART_LIMIT, Mark.Weight.RULE, false);
    plot.level(chart.centre(), PapersSay.CHART_MEAN, Mark.Weight.RULE, true);
    if (chart.upper() != null) {
      plot.level(chart.upper(), PapersSay.CHART_UPPER, Mark.Weight.RULE, true);
    }
    if (chart.lower() != null) {
      plot.level(chart.lower(), PapersSay.CHART_LOWER, Mark.Weight.RULE, true);
    }
  }

  /**
   * The marks of a loop in a box of the given size, millimetres: the first point is a frame, the
   * last a diamond, so that the order can be followed from one to the other.
   */
  public static List<Mark> of(LoopChart chart, double width, double height) {
    return of(chart, width, height, Reason::english);
  }

  /** The same with its words in another language. */
  public static List<Mark> of(
      LoopChart chart, double width, double height, Function<Reason, String> voice) {
    Plot plot = new Plot(chart.title(), chart.unit(), width, height, voice);
    List<LoopChart.Point> points = chart.points();
    if (points.isEmpty()) {
      return plot.empty();
    }
    double most = points.stream().mapToDouble(LoopChart.Point::value).max().orElse(1);
    double least = points.stream().mapToDouble(LoopChart.Point::value).min().orElse(0);
    plot.valueAxis(Math.min(0, least), most);
    plot.acrossAxis(
        points.stream().map(LoopChart.Point::across).toList(), voice.apply(chart.across()));
    for (int i = 1; i < points.size(); i++) {
      LoopChart.Point a = points.get(i - 1);
      LoopChart.Point b = points.get(i);
      plot.join(plot.across(a.across()), a.value(), plot.across(b.across()), b.value(), false);
    }
    for (int i = points.size() - 1; i >= 0; i--) {
      Mark.Shape shape = i == 0 ? Mark.Shape.FRAME : end(i == points.size() - 1);
      plot.dot(plot.across(points.get(i).across()), points.get(i).value(), DOT, shape);
    }
    plot.legend(
        List.of(
            voice.apply(PapersSay.CHART_FIRST.with()), voice.apply(PapersSay.CHART_LAST.with())),
        LOOP_ENDS,
        DOT);
    return plot.marks();
  }

  private static Mark.Shape end(boolean last) {
    return last ? Mark.Shape.DIAMOND : Mark.Shape.DISC;
  }
}
