package org.siltbench.station.command.load;

import java.util.ArrayList;
import java.util.List;
import org.siltbench.calc.load.EventLoad;
import org.siltbench.calc.load.LogBase;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.station.work.load.LoadDocument;
import org.siltbench.station.work.load.LoadFiles;
import org.siltbench.station.work.load.LoadUnit;
import org.siltbench.station.work.load.SiteLoad;

/** A load in lines for people. */
final class LoadText {

  private static final int DIGITS = 4;

  private LoadText() {}

  static List<String> of(SiteLoad site, LoadUnit unit) {
    String big = unit == LoadUnit.US ? "short tons" : "t";
    List<String> out = new ArrayList<>();
    EventLoad load = site.load();
    String where = site.site().isEmpty() ? "load" : site.site();
    String u = Double.isNaN(site.uncertainty()) ? "" : " (u " + figure(site.uncertainty()) + " kg)";
    out.add(
        where
            + ": "
            + figure(load.kilograms())
            + " kg"
            + u
            + ", "
            + figure(unit.fromTonnes(load.tonnes()))
            + " "
            + big
            + " in "
            + figure(load.cubicMetres())
            + " m³ of water; flow-weighted mean "
            + figure(load.flowWeightedMean())
            + " mg/L");
    out.add(
        "  "
            + site.from()
            + " to "
            + site.to()
            + ", "
            + ForPeople.value(100 * load.coverage(), 3, 0)
            + " % covered, "
            + load.gaps().size()
            + " gaps");
    site.moments().forEach(moment -> out.add(moment(moment, unit, big)));
    out.add("  " + LoadFiles.chart(site, unit).title().english());
    SiteLoad.Rating rating = site.rating();
    if (rating != null) {
      rating(out, rating);
    }
    return out;
  }

  private static String moment(SiteLoad.Moment moment, LoadUnit unit, String big) {
    String rate = figure(unit.fromTonnes(moment.tonnesPerDay()));
    return "  "
        + moment.at()
        + " "
        + moment.sample()
        + ": "
        + figure(moment.mgPerL())
        + " mg/L, "
        + (rate.isEmpty()
            ? "no discharge known"
            : figure(unit.fromCubicMetres(moment.discharge()))
                + " "
                + unit.flowTitle()
                + ", "
                + rate
                + " "
                + big
                + "/day");
  }

  private static void rating(List<String> out, SiteLoad.Rating rating) {
    String base = rating.curve().base() == LogBase.TEN ? "log10" : "ln";
    out.add(
        "  rating curve of "
            + rating.points()
            + " samples: "
            + base
            + " C = "
            + figure(rating.curve().line().intercept())
            + " + "
            + figure(rating.curve().line().slope())
            + " "
            + base
            + " Q, s "
            + figure(rating.curve().line().residualDeviation()));
    rating
        .kilograms()
        .forEach(
            (correction, kg) ->
                out.add(
                    "    load by the curve, correction "
                        + LoadDocument.word(correction)
                        + ": "
                        + figure(kg)
                        + " kg"));
  }

  private static String figure(double value) {
    return ForPeople.value(value, DIGITS, 0);
  }
}
