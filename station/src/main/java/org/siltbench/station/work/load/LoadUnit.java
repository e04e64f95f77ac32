package org.siltbench.station.work.load;

import org.siltbench.calc.load.LoadUnits;
import org.siltbench.station.Problem;

/** The units a load is told in. */
public enum LoadUnit {
  /** kg, t, t/day, m³/s. */
  METRIC("metric", "t", "m3_s", "m³/s"),
  /** Short tons, short tons a day, ft³/s, with the exact factors. */
  US("us", "short_tons", "ft3_s", "ft³/s");

  private final String word;
  private final String mass;
  private final String flow;
  private final String flowTitle;

  LoadUnit(String word, String mass, String flow, String flowTitle) {
    this.word = word;
    this.mass = mass;
    this.flow = flow;
    this.flowTitle = flowTitle;
  }

  /** Reads a word. */
  public static LoadUnit of(String word) {
    for (LoadUnit unit : values()) {
      if (unit.word.equals(word)) {
        return unit;
      }
    }
    throw new Problem.WrongUse(LoadSays.NO_UNITS, word);
  }

  /** The stable word. */
  public String word() {
    return word;
  }

  /** A large mass's unit in a column's name. */
  String mass() {
    return mass;
  }

  /** Discharge's unit in a column's name. */
  String flow() {
    return flow;
  }

  /** Discharge's unit on an axis. */
  public String flowTitle() {
    return flowTitle;
  }

  /** A large mass from tonnes. */
  public double fromTonnes(double tonnes) {
    return this == US ? LoadUnits.shortTons(tonnes) : tonnes;
  }

  /** Discharge from m³/s. */
  public double fromCubicMetres(double cubicMetres) {
    return this == US ? LoadUnits.cubicFeet(cubicMetres) : cubicMetres;
  }
}
