package org.siltbench.demo.storm;

/**
 * What is true of one filter, known to the demo and to nobody at the bench. Masses in mg.
 *
 * @param id the filter ID
 * @param clean the clean, dry filter
 * @param loaded whether water has been filtered through it
 * @param residue what the water left on it and stayed on it
 * @param concentration what was in the bottle, mg/L; zero for blanks
 * @param water water still held after the first drying; each later drying leaves a part of it
 * @param keeps the part that a drying leaves
 * @param dryings dryings since it was last wet
 */
public record TrueFilter(
    String id,
    double clean,
    boolean loaded,
    double residue,
    double concentration,
    double water,
    double keeps,
    int dryings) {

  /** A clean filter that has been washed and not dried. */
  static TrueFilter washed(String id, double clean) {
    return new TrueFilter(id, clean, false, 0, 0, 0.12, 0.05, 0);
  }

  /** The same with what the field left on it, wet. */
  public TrueFilter filtered(double residueMg, double concentrationMgL) {
    return new TrueFilter(id, clean, true, residueMg, concentrationMgL, 0.18, 0.04, 0);
  }

  /** The same holding more water for longer than others do. */
  public TrueFilter slowToDry() {
    return new TrueFilter(id, clean, loaded, residue, concentration, 4.5, 0.3, dryings);
  }

  /** The same without a part of its residue: it tore. */
  public TrueFilter losing(double mg) {
    return new TrueFilter(
        id, clean, loaded, Math.max(0, residue - mg), concentration, water, keeps, dryings);
  }

  /** The same after one more drying. */
  public TrueFilter dried() {
    return new TrueFilter(id, clean, loaded, residue, concentration, water, keeps, dryings + 1);
  }

  /** What lies on the pan when it comes cool out of the desiccator. */
  public double onPan() {
    double held = dryings == 0 ? 25 : water * Math.pow(keeps, dryings - 1.0);
    return clean + residue + held;
  }
}
