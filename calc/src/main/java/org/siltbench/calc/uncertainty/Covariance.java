package org.siltbench.calc.uncertainty;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Contributions of parts and how they combine. */
final class Covariance {

  private static final double ROUNDING = 1e-12;

  private final List<Part> parts;
  private final double[][] products;
  private final int[] group;

  Covariance(List<Part> parts, List<Correlation> correlations) {
    this.parts = parts;
    int n = parts.size();
    this.products = new double[n][n];
    this.group = new int[n];
    Map<String, Integer> places = places();
    for (int i = 0; i < n; i++) {
      group[i] = i;
      products[i][i] = parts.get(i).contribution() * parts.get(i).contribution();
    }
    for (Correlation correlation : correlations) {
      tie(place(places, correlation.first()), place(places, correlation.second()), correlation.r());
    }
  }

  private Map<String, Integer> places() {
    Map<String, Integer> places = new HashMap<>();
    for (int i = 0; i < parts.size(); i++) {
      if (places.put(parts.get(i).name(), i) != null) {
        throw new IllegalArgumentException("two parts named " + parts.get(i).name());
      }
    }
    return places;
  }

  private static int place(Map<String, Integer> places, String name) {
    Integer place = places.get(name);
    if (place == null) {
      throw new IllegalArgumentException("correlation with an unknown part: " + name);
    }
    return place;
  }

  private void tie(int i, int j, double r) {
    products[i][j] = parts.get(i).contribution() * parts.get(j).contribution() * r;
    products[j][i] = products[i][j];
    int from = group[j];
    int to = group[i];
    for (int at = 0; r != 0 && at < group.length; at++) {
      group[at] = group[at] == from ? to : group[at];
    }
  }

  double[] rowSums() {
    double[] sums = new double[products.length];
    for (int i = 0; i < sums.length; i++) {
      for (double product : products[i]) {
        sums[i] += product;
      }
    }
    return sums;
  }

  double total() {
    return sound(sum(rowSums()));
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  /** Rounding may leave a tiny negative variance where parts cancel; more is a contradiction. */
  private double sound(double variance) {
    double scale = 0;
    for (int i = 0; i < products.length; i++) {
      scale += products[i][i];
    }
    if (variance < -ROUNDING * scale) {
      throw new IllegalArgumentException("the correlations contradict each other");
    }
    return Math.max(0, variance);
  }

  double effectiveDof() {
    double[] sums = rowSums();
    double fourths = 0;
    for (int g = 0; g < group.length; g++) {
      double variance = 0;
      double dof = Double.POSITIVE_INFINITY;
      for (int i = 0; i < group.length; i++) {
        if (group[i] == g) {
          variance += sums[i];
          dof = products[i][i] > 0 ? Math.min(dof, parts.get(i).dof()) : dof;
        }
      }
      fourths += sound(variance) * variance / dof;
    }
    double total = total();
    return fourths > 0 ? total * total / fourths : Double.POSITIVE_INFINITY;
  }
}
