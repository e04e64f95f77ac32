package org.siltbench.calc.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked examples of the GUM (JCGM 100:2008) and of Eurachem/CITAC QUAM. */
final class PublishedBudgetsTest {

  private static final double INF = Double.POSITIVE_INFINITY;

  // GUM H.1, end-gauge calibration; inputs seen in the published text. Result: uc 31.71 nm (printed
  // 32), nu 16.8 (printed 16), U99 92.6 nm with nu truncated, 92.1 without (printed 93).
  @Test
  void gum_h1_end_gauge() {
    double ls = 50.000623e6;
    double alphaS = 11.5e-6;
    Budget d =
        Budget.ofIndependent(
            215,
            "nm",
            List.of(
                new Part("repeated observations", 5.8, "nm", 1, 24),
                new Part("random effects of comparator", 3.9, "nm", 1, 5),
                new Part("systematic effects of comparator", 6.7, "nm", 1, 8)));
    assertEquals(9.7, d.u(), 0.05);
    assertEquals(25.6, d.dof(), 0.2); // printed with u rounded to 9.7 first
    Budget length =
        Budget.ofIndependent(
            ls + 215,
            "nm",
            List.of(
                new Part("standard", 25, "nm", 1, 18),
                new Part("difference", 9.7, "nm", 1, 25.6),
                new Part("expansion difference", 0.58e-6, "1/K", -ls * -0.1, 50),
                new Part("temperature difference", 0.029, "K", -ls * alphaS, 2)));
    assertEquals(31.71, length.u(), 0.01);
    assertEquals(16.8, length.dof(), 0.2); // 16.66 without rounding the parts first
    double u99 = length.expanded(Coverage.ofProbability(0.99));
    assertEquals(92.5, u99, 0.5);
    double truncated = Coverage.ofProbability(0.99).factor(16) * length.u();
    assertEquals(92.6, truncated, 0.05);
  }

  // GUM G.4.1: Y = b X1 X2 X3, relative uncertainties 0.25, 0.57, 0.82 %, n = 10, 5, 15 (from
  // memory, recomputed): uc 1.03 %, nu 19.0, t95 2.093, U95 2.155 %.
  @Test
  void gum_g41_product_of_three() {
    Budget y =
        Budget.ofIndependent(
            100,
            "%",
            List.of(
                new Part("X1", 0.25, "%", 1, 9),
                new Part("X2", 0.57, "%", 1, 4),
                new Part("X3", 0.82, "%", 1, 14)));
    assertEquals(1.0295, y.u(), 5e-5);
    assertEquals(19.0, y.dof(), 0.05);
    Coverage coverage = Coverage.ofProbability(0.95);
    assertEquals(2.093, y.k(coverage), 5e-4);
    assertEquals(2.155, y.expanded(coverage), 1e-3);
  }

  // GUM 5.2.2, example (from memory): ten resistors of 1000 ohm compared with the same standard, u
  // 0.100 ohm, in series: fully correlated, u = 1.00 ohm (0.32 if they were independent).
  @Test
  void gum_522_ten_resistors_of_one_standard() {
    List<Part> parts = new ArrayList<>();
    List<Correlation> ties = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      parts.add(new Part("R" + i, 0.100, "ohm", 1, 7));
      for (int j = 0; j < i; j++) {
        ties.add(new Correlation("R" + j, "R" + i, 1));
      }
    }
    Budget series = new Budget(10_000, "ohm", parts, ties);
    assertEquals(1.00, series.u(), 1e-12);
    assertEquals(7, series.dof(), 1e-9);
    assertEquals(0.3162, Budget.ofIndependent(10_000, "ohm", parts).u(), 1e-4);
    for (double share : series.shares()) {
      assertEquals(0.1, share, 1e-12);
    }
  }

  // GUM H.2, simultaneous resistance and reactance (data and results from memory): R 127.732 (u
  // 0.071), X 219.847 (u 0.295), Z 254.260 (u 0.236) ohm.
  @Test
  void gum_h2_correlated_voltage_current_and_phase() {
    double v = 4.9990;
    double i = 19.6610e-3;
    double phi = 1.04446;
    List<Correlation> ties =
        List.of(
            new Correlation("V", "I", -0.355),
            new Correlation("V", "phi", 0.858),
            new Correlation("I", "phi", -0.645));
    assertEquals(
        0.071,
        impedance(
            v * Math.cos(phi) / i,
            Math.cos(phi) / i,
            -v * Math.cos(phi) / (i * i),
            -v * Math.sin(phi) / i,
            ties),
        0.001);
    assertEquals(
        0.295,
        impedance(
            v * Math.sin(phi) / i,
            Math.sin(phi) / i,
            -v * Math.sin(phi) / (i * i),
            v * Math.cos(phi) / i,
            ties),
        0.002);
    assertEquals(0.236, impedance(v / i, 1 / i, -v / (i * i), 0, ties), 0.001);
  }

  private static double impedance(
      double value, double cv, double ci, double cphi, List<Correlation> ties) {
    return new Budget(
            value,
            "ohm",
            List.of(
                Part.known("V", 0.0032, "V", cv),
                Part.known("I", 0.0095e-3, "A", ci),
                Part.known("phi", 0.00075, "rad", cphi)),
            ties)
        .u();
  }

  // GUM H.3, thermometer line: y1 -0.1712 (u 0.00288), y2 0.00218 (u 0.000668), r -0.9304; at 30
  // °C,
  // ten degrees from the reference: u 0.0041 (0.00414 recomputed).
  @Test
  void gum_h3_prediction_from_a_line_with_correlated_coefficients() {
    List<Part> parts =
        List.of(new Part("y1", 0.00288, "°C", 1, 9), new Part("y2", 0.000668, "1", 10, 9));
    Budget b30 = new Budget(-0.14938, "°C", parts, List.of(new Correlation("y1", "y2", -0.9304)));
    assertEquals(0.00414, b30.u(), 2e-5);
    assertEquals(9, b30.dof(), 1e-9);
    double[] shares = b30.shares();
    assertEquals(1, shares[0] + shares[1], 1e-12);
    assertEquals(-0.56, shares[0], 0.03);
  }

  // Eurachem/CITAC QUAM A1, cadmium standard (inputs seen in the published text): c 1002.70 mg/L, u
  // 0.8352.
  @Test
  void eurachem_a1_cadmium_standard() {
    Budget volume =
        Budget.ofIndependent(
            100.0,
            "mL",
            List.of(
                Part.known("calibration", StandardUncertainty.triangular(0.1), "mL", 1),
                Part.known("repeatability", 0.02, "mL", 1),
                Part.known("temperature", StandardUncertainty.rectangular(0.084), "mL", 1)));
    assertEquals(0.06647, volume.u(), 5e-5);
    double c = 1000 * 100.28 * 0.9999 / 100.0;
    Budget concentration =
        Budget.ofIndependent(
            c,
            "mg/L",
            List.of(
                Part.known("mass", 0.05, "mg", c / 100.28),
                Part.known("purity", 0.000058, "1", c / 0.9999),
                Part.known("volume", volume.u(), "mL", -c / 100.0)));
    assertEquals(1002.70, c, 5e-3);
    assertEquals(0.8352, concentration.u(), 1e-4);
  }

  // GUM F.2.2.1 and 4.3: u = 0.29 d; check values d 0.1 mg: 0.028868, two readings 0.040825 mg.
  @Test
  void standard_uncertainties_of_what_is_usually_stated() {
    assertEquals(0.028868, StandardUncertainty.resolution(0.1), 5e-7);
    assertEquals(0.040825, StandardUncertainty.resolution(0.1) * Math.sqrt(2), 5e-7);
    assertEquals(0.040825, 0.1 / Math.sqrt(6), 5e-7);
    assertEquals(0.57735, StandardUncertainty.rectangular(1), 5e-6);
    assertEquals(0.408248, StandardUncertainty.triangular(1), 5e-7);
    assertEquals(0.025, StandardUncertainty.certificate(0.05, 2));
    // GUM G.4.2: u known to 25 % has 8 degrees of freedom.
    assertEquals(8, StandardUncertainty.dofOfEstimate(0.25), 1e-12);
    assertEquals(INF, StandardUncertainty.dofOfEstimate(0));
  }
}
