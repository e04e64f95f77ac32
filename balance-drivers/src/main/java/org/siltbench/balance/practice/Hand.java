package org.siltbench.balance.practice;

/**
 * The hand at the practice balance. It has its own way in: nothing of it goes through the link,
 * just as on a bench. Every act happens at the simulated now.
 */
public interface Hand {

  /** Lays one more thing on the pan. */
  void put(Load load);

  /** Takes everything off the pan. */
  void takeOff();

  /** Touches the pan with the tweezers for a moment. */
  void touch();

  /** Opens the door of the draught shield. */
  void openDoor();

  /** Closes it. */
  void closeDoor();

  /** Presses the key that sets the display to zero. */
  void zero();

  /** Presses the key that makes the balance send one line. */
  void print();
}
