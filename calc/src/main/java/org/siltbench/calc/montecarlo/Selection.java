package org.siltbench.calc.montecarlo;

/** Finds the k-th smallest of many numbers without sorting them all. */
final class Selection {

  private static final int SMALL = 600;

  private Selection() {}

  /**
   * Moves the k-th smallest of a[left..right] to place k, smaller ones before it, greater ones
   * after, and returns it. R. W. Floyd, R. L. Rivest, Comm. ACM 18 (1975) 173, algorithm 489.
   */
  static double smallest(double[] a, int left, int right, int k) {
    int low = left;
    int high = right;
    while (high > low) {
      if (high - low > SMALL) {
        narrow(a, low, high, k);
      }
      int rest = partition(a, low, high, k);
      low = rest < k ? rest + 1 : low;
      high = rest > k ? rest - 1 : high;
      if (rest == k) {
        break;
      }
    }
    return a[k];
  }

  /** Brings a good pivot to place k by selecting within a sample around it. */
  private static void narrow(double[] a, int low, int high, int k) {
    int n = high - low + 1;
    int i = k - low + 1;
    double z = Math.log(n);
    double s = 0.5 * Math.exp(2 * z / 3);
    double sd = 0.5 * Math.sqrt(z * s * (n - s) / n) * Integer.signum(2 * i - n);
    int from = Math.max(low, (int) (k - i * s / n + sd));
    int to = Math.min(high, (int) (k + (n - i) * s / n + sd));
    smallest(a, from, to, k);
  }

  /** Splits about a[k]; returns where the pivot came to rest. */
  private static int partition(double[] a, int low, int high, int k) {
    double pivot = a[k];
    swap(a, k, high);
    int i = low;
    int j = high - 1;
    while (true) {
      while (i <= j && a[i] < pivot) {
        i++;
      }
      while (i <= j && a[j] > pivot) {
        j--;
      }
      if (i > j) {
        break;
      }
      swap(a, i++, j--);
    }
    swap(a, i, high);
    return i;
  }

  private static void swap(double[] a, int i, int j) {
    double t = a[i];
    a[i] = a[j];
    a[j] = t;
  }
}
