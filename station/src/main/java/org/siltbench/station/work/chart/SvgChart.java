package org.siltbench.station.work.chart;

import java.util.List;
import java.util.Locale;
import org.siltbench.labels.chart.Mark;

/** Marks as an SVG picture in millimetres. The same marks give the same text. */
public final class SvgChart {

  private final StringBuilder out = new StringBuilder();

  private SvgChart() {}

  /** The picture. */
  public static String of(List<Mark> marks, double width, double height, String title) {
    SvgChart svg = new SvgChart();
    svg.open(width, height, title);
    marks.forEach(svg::mark);
    svg.out.append("</svg>\n");
    return svg.out.toString();
  }

  private void open(double width, double height, String title) {
    out.append(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\"")
        .append(attribute("width", mm(width) + "mm"))
        .append(attribute("height", mm(height) + "mm"))
        .append(attribute("viewBox", "0 0 " + mm(width) + ' ' + mm(height)))
        .append(" role=\"img\" font-family=\"sans-serif\">\n<title>")
        .append(escaped(title))
        .append("</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n");
  }

  private void mark(Mark mark) {
    if (mark instanceof Mark.Line line) {
      line(line);
    } else if (mark instanceof Mark.Dot dot) {
      dot(dot);
    } else if (mark instanceof Mark.Words words) {
      words(words);
    }
  }

  private void line(Mark.Line line) {
    out.append("<line")
        .append(attribute("x1", mm(line.x1())))
        .append(attribute("y1", mm(line.y1())))
        .append(attribute("x2", mm(line.x2())))
        .append(attribute("y2", mm(line.y2())))
        .append(attribute("stroke", Strokes.colour(line.weight())))
        .append(attribute("stroke-width", mm(Strokes.width(line.weight()))))
        .append(line.dashed() ? attribute("stroke-dasharray", "1.2 0.8") : "")
        .append("/>\n");
  }

  private void dot(Mark.Dot dot) {
    double half = dot.size() / 2;
    String look =
        Strokes.hollow(dot.shape())
            ? " fill=\"#fff\" stroke=\"#000\" stroke-width=\"0.3\"/>\n"
            : " fill=\"#000\"/>\n";
    switch (dot.shape()) {
      case DISC, RING ->
          out.append("<circle")
              .append(attribute("cx", mm(dot.x())))
              .append(attribute("cy", mm(dot.y())))
              .append(attribute("r", mm(half)));
      case SQUARE, FRAME ->
          out.append("<rect")
              .append(attribute("x", mm(dot.x() - half)))
              .append(attribute("y", mm(dot.y() - half)))
              .append(attribute("width", mm(dot.size())))
              .append(attribute("height", mm(dot.size())));
      case DIAMOND, KITE -> out.append("<path").append(attribute("d", diamond(dot, half)));
    }
    out.append(look);
  }

  private static String diamond(Mark.Dot dot, double half) {
    return "M"
        + mm(dot.x())
        + ' '
        + mm(dot.y() - half)
        + "L"
        + mm(dot.x() + half)
        + ' '
        + mm(dot.y())
        + "L"
        + mm(dot.x())
        + ' '
        + mm(dot.y() + half)
        + "L"
        + mm(dot.x() - half)
        + ' '
        + mm(dot.y())
        + "Z";
  }

  private void words(Mark.Words words) {
    String anchor =
        switch (words.anchor()) {
          case LEFT -> "start";
          case CENTRE -> "middle";
          case RIGHT -> "end";
        };
    out.append("<text")
        .append(attribute("x", mm(words.x())))
        .append(attribute("y", mm(words.y())))
        .append(attribute("font-size", mm(words.size() * Strokes.MM_PER_POINT)))
        .append(attribute("text-anchor", anchor))
        .append('>')
        .append(escaped(words.text()))
        .append("</text>\n");
  }

  private static String attribute(String name, String value) {
    return ' ' + name + "=\"" + value + '"';
  }

  private static String mm(double value) {
    String text = String.format(Locale.ROOT, "%.3f", value);
    return text.replaceFirst("\\.?0+$", "").replaceFirst("^-0$", "0");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replaceAll("[\\p{Cntrl}]", " ");
  }
}
