package org.siltbench.station.work.load;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.load.BiasCorrection;
import org.siltbench.calc.load.DischargeLoop;
import org.siltbench.calc.load.EventLoad;
import org.siltbench.calc.load.LoadUnits;
import org.siltbench.calc.load.RatingCurve;
import org.siltbench.calc.load.Series;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/** One site's load being worked out. */
final class SiteCalculation {

  private static final int FEWEST_FOR_RATING = 3;

  private final LoadQuestion question;
  private final String site;
  private final Series flow;
  private final List<Sampled> samples;
  private final Series concentration;
  private final List<Words> notes = new ArrayList<>();

  SiteCalculation(
      LoadQuestion question, String site, List<Series.Point> flow, List<Sampled> samples) {
    this.question = question;
    this.site = site;
    this.flow = series(Said.of(LoadSays.DISCHARGE), flow, question.flowStep());
    this.samples = oneATime(samples);
    this.concentration =
        series(
            Said.of(LoadSays.CONCENTRATION),
            this.samples.stream().map(s -> new Series.Point(s.at(), s.mgPerL())).toList(),
            question.sampleStep());
  }

  private Series series(Words what, List<Series.Point> points, Duration step) {
    try {
      return Series.of(points, step);
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(LoadSays.VALUE, what, site, Elsewhere.words(e));
    }
  }

  /** In order of time; a declared pair counts with its mean. */
  private List<Sampled> oneATime(List<Sampled> given) {
    Map<Instant, Sampled> out = new TreeMap<>();
    for (Sampled sampled : given) {
      out.merge(sampled.at(), sampled, this::mean);
    }
    return List.copyOf(out.values());
  }

  private Sampled mean(Sampled a, Sampled b) {
    if (a.pair().isEmpty() || !a.pair().equals(b.pair())) {
      throw new Problem.WrongUse(
          LoadSays.SAME_TIME, a.sample(), b.sample(), site, Loads.text(a.at()));
    }
    String both = a.sample() + " and " + b.sample();
    notes.add(Said.of(LoadSays.NOTE_PAIR, Said.of(LoadSays.BOTH, a.sample(), b.sample())));
    double u = Math.hypot(a.u(), b.u()) / 2;
    return new Sampled(site, both, a.at(), (a.mgPerL() + b.mgPerL()) / 2, u, a.pair());
  }

  SiteLoad result() {
    Instant from = begin();
    Instant to = end();
    if (!to.isAfter(from)) {
      throw new Problem.WrongUse(LoadSays.NO_COMMON_TIME, site);
    }
    EventLoad load = EventLoad.integrate(flow, concentration, from, to);
    for (Series.Gap gap : load.gaps()) {
      notes.add(Said.of(LoadSays.NOTE_GAP, Loads.text(gap.from()), Loads.text(gap.to())));
    }
    DischargeLoop loop = DischargeLoop.of(flow, concentration);
    if (isOpen(loop.points())) {
      notes.add(Said.of(LoadSays.NOTE_OPEN));
    }
    return new SiteLoad(
        site, from, to, load, uncertainty(load), moments(), loop, rating(from, to), notes);
  }

  private static boolean isOpen(List<DischargeLoop.Point> points) {
    if (points.size() < 2) {
      return false;
    }
    double low = points.stream().mapToDouble(DischargeLoop.Point::discharge).min().orElse(0);
    double high = points.stream().mapToDouble(DischargeLoop.Point::discharge).max().orElse(0);
    return points.get(points.size() - 1).discharge() > (low + high) / 2;
  }

  private Instant begin() {
    OffsetDateTime stated = question.from();
    Instant common =
        flow.first().isAfter(concentration.first()) ? flow.first() : concentration.first();
    return stated == null ? common : stated.toInstant();
  }

  private Instant end() {
    OffsetDateTime stated = question.to();
    Instant common =
        flow.last().isBefore(concentration.last()) ? flow.last() : concentration.last();
    return stated == null ? common : stated.toInstant();
  }

  /** What all share is taken out of each one's own, so that it is counted once. */
  private double uncertainty(EventLoad load) {
    double shared = question.sharedRelative();
    double[] own = new double[samples.size()];
    for (int i = 0; i < own.length; i++) {
      double u = samples.get(i).u();
      double common = shared * samples.get(i).mgPerL();
      own[i] = Double.isNaN(u) ? Double.NaN : Math.sqrt(Math.max(0, u * u - common * common));
      if (Double.isNaN(own[i])) {
        notes.add(Said.of(LoadSays.NOTE_NO_U, samples.get(i).sample()));
        return Double.NaN;
      }
    }
    return load.uncertainty(own, shared);
  }

  private List<SiteLoad.Moment> moments() {
    List<SiteLoad.Moment> out = new ArrayList<>();
    for (Sampled sampled : samples) {
      double q = flow.at(sampled.at());
      double rate = Double.isNaN(q) ? q : LoadUnits.tonnesPerDay(q, sampled.mgPerL());
      out.add(new SiteLoad.Moment(sampled.sample(), sampled.at(), q, sampled.mgPerL(), rate));
    }
    return out;
  }

  private SiteLoad.@Nullable Rating rating(Instant from, Instant to) {
    List<double[]> fit = new ArrayList<>();
    for (SiteLoad.Moment moment : moments()) {
      if (moment.discharge() > 0 && moment.mgPerL() > 0) {
        fit.add(new double[] {moment.discharge(), moment.mgPerL()});
      }
    }
    if (fit.size() < samples.size()) {
      notes.add(Said.of(LoadSays.NOTE_NO_LOGARITHM, samples.size() - fit.size()));
    }
    double[] q = fit.stream().mapToDouble(pair -> pair[0]).toArray();
    double[] c = fit.stream().mapToDouble(pair -> pair[1]).toArray();
    if (q.length < FEWEST_FOR_RATING) {
      notes.add(Said.of(LoadSays.NOTE_FEW));
      return null;
    }
    try {
      return rated(RatingCurve.fit(q, c, question.base()), q.length, from, to);
    } catch (IllegalArgumentException e) {
      notes.add(Said.of(LoadSays.NOTE_NO_CURVE, Elsewhere.words(e)));
      return null;
    }
  }

  /** The curve put in place of the samples, over the same time and the same discharge. */
  private SiteLoad.@Nullable Rating rated(RatingCurve curve, int n, Instant from, Instant to) {
    List<Series.Point> used = flowing(from, to);
    if (used.size() < 2) {
      notes.add(Said.of(LoadSays.NOTE_FEW_FLOWS));
      return null;
    }
    Map<BiasCorrection, Double> loads = new EnumMap<>(BiasCorrection.class);
    double covered = 0;
    for (BiasCorrection correction : BiasCorrection.values()) {
      List<Series.Point> estimates =
          used.stream()
              .map(p -> new Series.Point(p.at(), curve.at(p.value(), correction)))
              .toList();
      EventLoad load =
          EventLoad.integrate(flow, Series.of(estimates, question.flowStep()), from, to);
      loads.put(correction, load.kilograms());
      covered = load.coverage();
    }
    int beyond = (int) used.stream().filter(p -> curve.extrapolates(p.value())).count();
    if (beyond > 0) {
      notes.add(Said.of(LoadSays.NOTE_BEYOND, beyond));
    }
    return new SiteLoad.Rating(curve, n, loads, covered, beyond);
  }

  /** Discharges above zero within the time, its two ends included. */
  private List<Series.Point> flowing(Instant from, Instant to) {
    Map<Instant, Double> out = new TreeMap<>();
    for (Series.Point p : flow.points()) {
      if (!p.at().isBefore(from) && !p.at().isAfter(to)) {
        out.put(p.at(), p.value());
      }
    }
    out.putIfAbsent(from, flow.at(from));
    out.putIfAbsent(to, flow.at(to));
    return out.entrySet().stream()
        .filter(p -> p.getValue() > 0)
        .map(p -> new Series.Point(p.getKey(), p.getValue()))
        .toList();
  }
}
