package org.siltbench.calc.load;

/**
 * What is done about the low bias of a curve fitted in logarithms and turned back. USGS OSW
 * technical memorandum 93.08: the minimum-variance estimator where the errors are normal, smearing
 * otherwise.
 */
public enum BiasCorrection {
  /** Nothing: estimates the median, not the mean. */
  NONE,
  /**
   * Parametric, exp(s²·ln²(base)/2), which is exp(2.651·s²) for base 10. R. I. Ferguson, Water
   * Resour. Res. 22 (1986) 74-76. Assumes normal errors; too large for few points or large s.
   */
  PARAMETRIC,
  /**
   * Smearing, the mean of base^residual. N. Duan, J. Am. Stat. Assoc. 78 (1983) 605-610. Assumes no
   * shape of the errors.
   */
  SMEARING,
  /**
   * Minimum-variance unbiased for normal errors, with the leverage of each estimate. D. Bradu, Y.
   * Mundlak, J. Am. Stat. Assoc. 65 (1970) 198-211; T. A. Cohn et al., Water Resour. Res. 25 (1989)
   * 937-942.
   */
  MINIMUM_VARIANCE
}
