package org.siltbench.demo.bench.stability;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Draws one warm placement as SVG: what was shown, what was true, and when each watcher recorded.
 */
public final class StabilityPicture {

  private static final double WIDTH = 860;
  private static final double HEIGHT = 420;
  private static final double LEFT = 60;
  private static final double TOP = 50;
  private static final double BOTTOM = 370;
  private static final double RIGHT = 840;
  private static final double SECONDS = 120;

  private final Stream stream;
  private final double least;
  private final double most;
  private final StringBuilder svg = new StringBuilder();

  private StabilityPicture(Stream stream) {
    this.stream = stream;
    this.least = stream.truth() - 5 * stream.tolerance();
    this.most = stream.truth() + 2.5 * stream.tolerance();
  }

  /** Writes the picture to the path given; a seed and a number may follow. */
  public static void main(String[] args) throws IOException {
    long seed = args.length > 1 ? Long.parseLong(args[1]) : 2026;
    long number = args.length > 2 ? Long.parseLong(args[2]) : firstWarm(seed);
    String svg = new StabilityPicture(Simulator.play(Draw.of(seed, number))).draw(seed, number);
    Files.writeString(Path.of(args[0]), svg);
  }

  /** The first warm placement without a draught that anyone could tell and that is recorded. */
  private static long firstWarm(long seed) {
    long i = 0;
    while (!shows(Draw.of(seed, i))) {
      i++;
    }
    return i;
  }

  private static boolean shows(Placement p) {
    if (p.kind() != Placement.Case.WARM
        || p.output().rate() < 10
        || p.divisionMg() > 0.1
        || p.noise().draught() > 0) {
      return false;
    }
    Stream s = Simulator.play(p);
    boolean late = s.oracle() > 20 && s.oracle() < 60;
    return late && !s.undetectable() && rightly(s, new OurPan().watch(s));
  }

  private static boolean rightly(Stream s, Outcome outcome) {
    return outcome.recordedAt() < 100 && !s.wrong(outcome.recorded());
  }

  private String draw(long seed, long number) {
    line(
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 %s %s' font-family='sans-serif'"
            + " font-size='13'>",
        WIDTH, HEIGHT);
    line("<rect width='%s' height='%s' fill='#ffffff'/>", WIDTH, HEIGHT);
    text(LEFT, 20, "start", "A warm filter: seed " + seed + ", placement " + number);
    band();
    axes();
    readings();
    int row = 0;
    marker("siltbench", new OurPan().watch(stream), "#0b6e4f", row++);
    for (Baseline baseline : Baseline.values()) {
      marker(baseline.toString(), baseline.watch(stream), "#b3452c", row++);
    }
    line("</svg>");
    return svg.toString();
  }

  private void band() {
    double high = y(stream.truth() + stream.tolerance());
    double low = y(stream.truth() - stream.tolerance());
    line(
        "<rect x='%.1f' y='%.1f' width='%.1f' height='%.1f' fill='#dcebdf'/>",
        LEFT, high, RIGHT - LEFT, low - high);
    text(RIGHT - 4, y(stream.truth()) - 4, "end", "truth ± T");
    double oracle = x(stream.oracle());
    line(
        "<line x1='%.1f' y1='%.1f' x2='%.1f' y2='%.1f' stroke='#333' stroke-dasharray='4 3'/>",
        oracle, TOP, oracle, BOTTOM);
    text(oracle, BOTTOM - 6, "end", "oracle ");
  }

  private void axes() {
    line("<path d='M%.1f %.1fV%.1fH%.1f' fill='none' stroke='#333'/>", LEFT, TOP, BOTTOM, RIGHT);
    for (int t = 0; t <= SECONDS; t += 20) {
      text(x(t), BOTTOM + 18, "middle", t + " s");
    }
    text(LEFT - 6, TOP + 4, "end", "d");
  }

  private void readings() {
    StringBuilder points = new StringBuilder();
    StringBuilder carrier = new StringBuilder();
    for (int i = stream.touch(); i < stream.time().length && stream.time()[i] < SECONDS; i++) {
      double t = x(stream.time()[i]);
      double shown = clamp((double) stream.shown()[i]);
      points.append(String.format(Locale.ROOT, "M%.1f %.1fh1", t, y(shown)));
      String move = carrier.length() == 0 ? "M" : "L";
      double at = y(clamp(stream.carrier()[i]));
      carrier.append(String.format(Locale.ROOT, "%s%.1f %.1f", move, t, at));
    }
    line("<path d='%s' stroke='#7a8ea6' stroke-width='1.5' fill='none'/>", points);
    line("<path d='%s' stroke='#1f3b57' stroke-width='1.2' fill='none'/>", carrier);
  }

  private void marker(String name, Outcome outcome, String colour, int row) {
    double labelY = BOTTOM - 100 + 20 * row;
    if (!outcome.isRecorded() || outcome.recordedAt() > SECONDS) {
      text(RIGHT - 4, labelY, "end", name + ": nothing recorded");
      return;
    }
    double error = outcome.recorded() - stream.truth();
    String verdict = stream.wrong(outcome.recorded()) ? "wrong by " : "off by ";
    double x = x(outcome.recordedAt());
    line("<circle cx='%.1f' cy='%.1f' r='5' fill='%s'/>", x, y(clamp(outcome.recorded())), colour);
    text(
        RIGHT - 4,
        labelY,
        "end",
        String.format(
            Locale.ROOT, "%s: %.1f s, %s%.1f d", name, outcome.recordedAt(), verdict, error));
  }

  private double clamp(double divisions) {
    return Math.max(least, Math.min(most, divisions));
  }

  private double x(double seconds) {
    return LEFT + (RIGHT - LEFT) * seconds / SECONDS;
  }

  private double y(double divisions) {
    return BOTTOM - (BOTTOM - TOP) * (divisions - least) / (most - least);
  }

  private void text(double x, double y, String anchor, String words) {
    line("<text x='%.1f' y='%.1f' text-anchor='%s'>%s</text>", x, y, anchor, words);
  }

  private void line(String format, Object... values) {
    svg.append(String.format(Locale.ROOT, format, values)).append('\n');
  }
}
