package org.siltbench.station.work.load;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.load.BiasCorrection;
import org.siltbench.calc.load.EventLoad;
import org.siltbench.calc.load.LogBase;
import org.siltbench.calc.load.RatingCurve;
import org.siltbench.station.said.Words;

/** A load as one tree, unrounded. */
public final class LoadDocument {

  private final Loads loads;
  private final LoadUnit unit;

  private LoadDocument(Loads loads, LoadUnit unit) {
    this.loads = loads;
    this.unit = unit;
  }

  /** The tree: {@code units, sites, notes}. What does not exist is null. */
  public static Map<String, @Nullable Object> of(Loads loads, LoadUnit unit) {
    return new LoadDocument(loads, unit).document();
  }

  private Map<String, @Nullable Object> document() {
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    out.put("units", unit.word());
    out.put("sites", loads.sites().stream().map(this::site).toList());
    out.put("notes", loads.notes().stream().map(Words::english).toList());
    return out;
  }

  private Map<String, @Nullable Object> site(SiteLoad site) {
    EventLoad load = site.load();
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    out.put("site", site.site());
    out.put("from", Loads.text(site.from()));
    out.put("to", Loads.text(site.to()));
    out.put("covered_share", load.coverage());
    out.put("load_kg", load.kilograms());
    out.put("u_load_kg", number(site.uncertainty()));
    out.put("load_" + unit.mass(), unit.fromTonnes(load.tonnes()));
    out.put("water_m3", load.cubicMetres());
    out.put("flow_weighted_mean_mg_l", number(load.flowWeightedMean()));
    out.put("gaps", gaps(load));
    out.put("samples", site.moments().stream().map(this::moment).toList());
    SiteLoad.Rating rating = site.rating();
    out.put("rating", rating == null ? null : rating(rating));
    out.put("loop", loop(site));
    out.put("notes", site.notes().stream().map(Words::english).toList());
    return out;
  }

  private static List<Map<String, Object>> gaps(EventLoad load) {
    List<Map<String, Object>> out = new ArrayList<>();
    load.gaps()
        .forEach(
            gap ->
                out.add(
                    Map.of(
                        "from", Loads.text(gap.from()),
                        "to", Loads.text(gap.to()),
                        "minutes", gap.length().toSeconds() / 60.0)));
    return out;
  }

  private Map<String, @Nullable Object> moment(SiteLoad.Moment moment) {
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    out.put("sample", moment.sample());
    out.put("time", Loads.text(moment.at()));
    out.put("q_" + unit.flow(), number(unit.fromCubicMetres(moment.discharge())));
    out.put("conc_mg_l", moment.mgPerL());
    out.put("load_" + unit.mass() + "_day", number(unit.fromTonnes(moment.tonnesPerDay())));
    return out;
  }

  private Map<String, @Nullable Object> rating(SiteLoad.Rating rating) {
    RatingCurve curve = rating.curve();
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    out.put("log_base", curve.base() == LogBase.TEN ? "10" : "e");
    out.put("samples", rating.points());
    out.put("a", curve.line().intercept());
    out.put("b", curve.line().slope());
    out.put("s", curve.line().residualDeviation());
    out.put("lowest_q_m3_s", curve.lowestDischarge());
    out.put("highest_q_m3_s", curve.highestDischarge());
    out.put("covered_share", rating.covered());
    out.put("extrapolated", rating.extrapolated());
    Map<String, Object> kilograms = new LinkedHashMap<>();
    rating.kilograms().forEach((correction, kg) -> kilograms.put(word(correction), kg));
    out.put("load_kg", kilograms);
    return out;
  }

  /** The stable word of a correction. */
  public static String word(BiasCorrection correction) {
    return correction.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static Map<String, Object> loop(SiteLoad site) {
    return Map.of(
        "turn", site.loop().turn().name().toLowerCase(Locale.ROOT),
        "area", site.loop().area(),
        "points", site.loop().points().size());
  }

  private static @Nullable Double number(double value) {
    return Double.isFinite(value) ? (Double) value : null;
  }
}
