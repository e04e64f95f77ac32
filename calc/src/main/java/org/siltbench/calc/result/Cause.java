package org.siltbench.calc.result;

/** The named parts of a concentration's uncertainty, in the order they are printed. */
public enum Cause {
  WEIGHING("weighing", "mg", "two weighings of each filter, as the method states them"),
  REPEATABILITY("repeatability", "mg", "re-weighing the same filter on this balance"),
  RESOLUTION("resolution", "mg", "the last displayed digit"),
  LINEARITY("linearity", "mg", "the balance's deviation from a straight line"),
  ECCENTRICITY("eccentricity", "mg", "the place on the pan"),
  CHECK_WEIGHT("check weight", "mg", "the span, the same at both weighings"),
  DRIFT("drift", "mg", "change of the span between the weighings"),
  BUOYANCY("air buoyancy", "mg", "change of the air between the weighings"),
  MOISTURE("moisture", "mg", "water taken up on the way to the pan"),
  BLANK("blank", "mg", "the blank that was subtracted, shared by all filters"),
  DISSOLVED("dissolved solids", "mg", "what was dissolved in the water that dried up"),
  VOLUME("volume", "mL", "as stated for this sample"),
  VOLUME_READING("volume reading", "mL", "reading a mark, tilt"),
  VOLUME_CALIBRATION("volume calibration", "mL", "the vessel's mark, shared by all its uses"),
  VOLUME_TEMPERATURE("volume temperature", "mL", "temperature of vessel and water"),
  SUBSAMPLING("sub-sampling", "mg/L", "taking an aliquot");

  private final String title;
  private final String unit;
  private final String means;
  private final boolean mass;
  private final boolean volume;

  Cause(String title, String unit, String means) {
    this.title = title;
    this.unit = unit;
    this.means = means;
    this.mass = unit.equals("mg");
    this.volume = unit.equals("mL");
  }

  /** The name in a budget table. */
  public String title() {
    return title;
  }

  /** The unit its standard uncertainty is stated in. */
  public String unit() {
    return unit;
  }

  /** What it is, in plain words. */
  public String means() {
    return means;
  }

  /** Its place in an array of parts. */
  @SuppressWarnings("EnumOrdinal") // an index in memory, never stored
  int place() {
    return ordinal();
  }

  /** True for parts of the residue, in mg. */
  boolean isMass() {
    return mass;
  }

  /** True for parts of the volume, in mL. */
  boolean isVolume() {
    return volume;
  }
}
