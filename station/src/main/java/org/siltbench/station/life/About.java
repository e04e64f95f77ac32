package org.siltbench.station.life;

import org.siltbench.station.register.Subject;

/** The stable words for what entries are about. */
public final class About {

  public static final String FILTER = "filter";
  public static final String BATCH = "batch";
  public static final String LOT = "lot";
  public static final String CYCLE = "cycle";
  public static final String SAMPLE = "sample";
  public static final String TRIP = "trip";
  public static final String BALANCE = "balance";
  public static final String WEIGHT = "weight";
  public static final String METHOD = "method";
  public static final String BENCH = "bench";
  public static final String ROOM = "room";

  private About() {}

  public static Subject filter(String id) {
    return new Subject(FILTER, id);
  }

  public static Subject batch(String code) {
    return new Subject(BATCH, code);
  }

  public static Subject lot(String name) {
    return new Subject(LOT, name);
  }

  public static Subject cycle(String id) {
    return new Subject(CYCLE, id);
  }

  public static Subject sample(String number) {
    return new Subject(SAMPLE, number);
  }

  public static Subject trip(String name) {
    return new Subject(TRIP, name);
  }

  public static Subject balance(String name) {
    return new Subject(BALANCE, name);
  }

  public static Subject weight(String name) {
    return new Subject(WEIGHT, name);
  }

  public static Subject method(String key) {
    return new Subject(METHOD, key);
  }

  public static Subject bench(String code) {
    return new Subject(BENCH, code);
  }

  /** The room the bench stands in. */
  public static Subject room(String benchCode) {
    return new Subject(ROOM, benchCode);
  }
}
