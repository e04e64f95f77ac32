package org.siltbench.balance.practice;

/**
 * The practice balance and the room it stands in. Amplitudes are standard deviations or peaks in
 * mg.
 *
 * @param stepMg smallest displayed step, mg
 * @param perSecond lines a second
 * @param jitter how unevenly lines come, as a share of the interval, 0 to 0.3
 * @param responseSeconds time constant towards a load, s
 * @param secondOrder true if it overshoots a little
 * @param noiseMg white noise, sd
 * @param draughtMg draught, sd; 0 for none
 * @param draughtSeconds correlation time of the draught, s
 * @param vibrationMg vibration, amplitude
 * @param vibrationHz vibration, frequency, Hz
 * @param creepMg creep amplitude A of A·ln(1 + t/5 s)
 * @param zeroDriftMg random walk of the zero, mg per root second
 * @param averaging how many inner values the balance averages, at 20 a second
 * @param markEarly true if its own stable mark comes too early
 */
public record Room(
    double stepMg,
    double perSecond,
    double jitter,
    double responseSeconds,
    boolean secondOrder,
    double noiseMg,
    double draughtMg,
    double draughtSeconds,
    double vibrationMg,
    double vibrationHz,
    double creepMg,
    double zeroDriftMg,
    int averaging,
    boolean markEarly) {

  /** A good bench: 0.01 mg, 10 lines a second, no draught. */
  public static final Room CALM =
      new Room(0.01, 10, 0.05, 0.4, false, 0.004, 0, 1, 0, 1, 0.002, 0.0001, 4, false);

  /** A bench beside a door: 0.01 mg with a draught of 0.04 mg. */
  public static final Room DRAUGHTY =
      new Room(0.01, 10, 0.1, 0.5, false, 0.005, 0.04, 1.5, 0, 1, 0.003, 0.0001, 4, false);

  /** A bench over a pump: vibration of 0.02 mg. */
  public static final Room SHAKY =
      new Room(0.01, 10, 0.1, 0.5, true, 0.005, 0, 1, 0.02, 1.7, 0.003, 0.0001, 4, true);

  /** Refuses a balance that cannot be. */
  public Room {
    if (!(stepMg >= 0.0001 && stepMg <= 1000)) {
      throw new IllegalArgumentException("step must be 0.0001 to 1000 mg, not " + stepMg);
    }
    if (!(perSecond >= 0.1 && perSecond <= 100)) {
      throw new IllegalArgumentException("lines a second must be 0.1 to 100, not " + perSecond);
    }
    if (!(jitter >= 0 && jitter <= 0.5) || averaging < 1) {
      throw new IllegalArgumentException("jitter 0 to 0.5, averaging at least 1");
    }
  }

  /** The same room with another displayed step, all noise scaled with it. */
  public Room withStep(double mg) {
    double k = mg / stepMg;
    return new Room(
        mg,
        perSecond,
        jitter,
        responseSeconds,
        secondOrder,
        noiseMg * k,
        draughtMg * k,
        draughtSeconds,
        vibrationMg * k,
        vibrationHz,
        creepMg * k,
        zeroDriftMg * k,
        averaging,
        markEarly);
  }
}
