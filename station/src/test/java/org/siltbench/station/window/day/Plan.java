package org.siltbench.station.window.day;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What is done on the day, whoever does it: the names, the water, the true masses. */
final class Plan {

  static final int FASTER = 20;
  static final String EVERY = "15m";
  static final String LENGTH = "10m";
  static final String BATCH = "Alder Fork storm";
  static final String METHOD = "sm-2540d-23";
  static final String BALANCE = "Left bench";
  static final String WEIGHT = "W100";
  static final String TRIP = "Alder Fork, May";
  static final String WHO = "RK";
  static final Duration TRIP_TIME = Duration.ofHours(2);
  static final Duration OVEN = Duration.ofMinutes(90);
  static final Duration DESICCATOR = Duration.ofMinutes(60);
  static final String READ_WRONGLY = "250";
  static final String READ_AGAIN = "260";

  /** What lies on the pan: clean, then after each stay in the oven. */
  enum Round {
    CLEAN(0, 0),
    FIRST(15.2, 0.25),
    SECOND(15.1, 0.22);

    private final double residueMg;
    private final double blankMg;

    Round(double residueMg, double blankMg) {
      this.residueMg = residueMg;
      this.blankMg = blankMg;
    }
  }

  private final Map<String, Integer> place = new TreeMap<>();

  Plan(List<String> filters) {
    filters.forEach(id -> place.put(id, place.size()));
  }

  /** Grams of what is asked for in these words. */
  String grams(String asked, Round round) {
    if (asked.contains(WEIGHT)) {
      return "0.100003";
    }
    int at =
        place.entrySet().stream()
            .filter(known -> asked.contains(known.getKey()))
            .findFirst()
            .orElseThrow(() -> new AssertionError("nobody asked for " + asked))
            .getValue();
    double residue = at == 0 ? round.residueMg : round.blankMg;
    double grams = 0.11234 + 0.0011 * at + residue / 1000;
    return String.format(java.util.Locale.ROOT, "%.6f", grams);
  }

  /** Sample and trip blank were out; the method blank, the last of them, stayed in the lab. */
  static List<String> returned(List<String> filters) {
    return filters.subList(0, filters.size() - 1);
  }

  /** The hour at which a sample was taken. */
  static String collected(int at) {
    return String.format("07:%02d", 15 * at);
  }
}
