package org.siltbench.station.work.load;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.load.EventLoad;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.labels.chart.LoopChart;
import org.siltbench.station.said.Words;

/**
 * The load at one site as a person reads it: figures as text, rounded.
 *
 * @param site its name, or empty
 * @param from begin, local time
 * @param to end, local time
 * @param kilograms the load, kg
 * @param u its standard uncertainty from the concentrations, kg, or empty
 * @param large the load in the large unit, with the unit
 * @param water the water that passed, m³
 * @param mean flow-weighted mean, mg/L
 * @param covered the share of the time that is covered, %
 * @param gaps how many gaps there are
 * @param curve the loads by the rating curve, one a correction; empty where there is none
 * @param loop concentration against discharge
 * @param notes what to know
 */
public record LoadSheet(
    String site,
    String from,
    String to,
    String kilograms,
    String u,
    String large,
    String water,
    String mean,
    String covered,
    int gaps,
    List<Curve> curve,
    LoopChart loop,
    List<Words> notes) {

  private static final int DIGITS = 4;
  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

  /** The load by the rating curve under one correction for the bias of logarithms. */
  public record Curve(String correction, String kilograms) {}

  /** One sheet a site. */
  public static List<LoadSheet> of(Loads loads, LoadUnit unit, ZoneId zone) {
    return loads.sites().stream().map(site -> of(site, unit, zone)).toList();
  }

  private static LoadSheet of(SiteLoad site, LoadUnit unit, ZoneId zone) {
    EventLoad load = site.load();
    String large = unit == LoadUnit.US ? " short tons" : " t";
    return new LoadSheet(
        site.site(),
        at(site.from(), zone),
        at(site.to(), zone),
        figure(load.kilograms()),
        Double.isNaN(site.uncertainty()) ? "" : ForPeople.uncertainty(site.uncertainty()),
        figure(unit.fromTonnes(load.tonnes())) + large,
        figure(load.cubicMetres()),
        figure(load.flowWeightedMean()),
        ForPeople.value(100 * load.coverage(), 3, 0),
        load.gaps().size(),
        curve(site.rating()),
        LoadFiles.chart(site, unit),
        site.notes());
  }

  private static List<Curve> curve(SiteLoad.@Nullable Rating rating) {
    List<Curve> out = new ArrayList<>();
    if (rating != null) {
      rating
          .kilograms()
          .forEach((how, kg) -> out.add(new Curve(LoadDocument.word(how), figure(kg))));
    }
    return out;
  }

  private static String at(Instant time, ZoneId zone) {
    return time.atZone(zone).format(MINUTE);
  }

  private static String figure(double value) {
    return ForPeople.value(value, DIGITS, 0);
  }
}
