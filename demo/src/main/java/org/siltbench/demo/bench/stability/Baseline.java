package org.siltbench.demo.bench.stability;

/** What people do without a detector. */
enum Baseline implements Watcher {
  WAIT_30_S("wait 30 s") {
    @Override
    boolean stable(Stream s, int i) {
      return s.time()[i] >= 30;
    }
  },
  FIVE_EQUAL("5 equal readings") {
    @Override
    boolean stable(Stream s, int i) {
      boolean equal = i - s.touch() >= 4;
      for (int k = i - 4; equal && k < i; k++) {
        equal = s.shown()[k] == s.shown()[i];
      }
      return equal;
    }
  },
  WITHIN_ONE_3_S("spread within 1 d for 3 s") {
    @Override
    boolean stable(Stream s, int i) {
      long least = s.shown()[i];
      long most = s.shown()[i];
      int k = i;
      while (k > s.touch() && s.time()[i] - s.time()[k] < 3) {
        k--;
        least = Math.min(least, s.shown()[k]);
        most = Math.max(most, s.shown()[k]);
      }
      return s.time()[i] - s.time()[k] >= 3 && most - least <= 1;
    }
  },
  OWN_MARK("the balance's own mark") {
    @Override
    boolean stable(Stream s, int i) {
      return s.marked()[i];
    }
  };

  private final String name;

  Baseline(String name) {
    this.name = name;
  }

  abstract boolean stable(Stream stream, int i);

  @Override
  public String toString() {
    return name;
  }

  @Override
  public Outcome watch(Stream s) {
    double threshold = 0.5 * 20 / s.placement().divisionMg();
    for (int i = s.touch(); i < s.time().length; i++) {
      if (s.shown()[i] > threshold && stable(s, i)) {
        return new Outcome(s.time()[i], s.time()[i], s.shown()[i], i - s.touch() + 1);
      }
    }
    return Outcome.NEVER;
  }
}
