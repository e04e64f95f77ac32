package org.siltbench.balance.practice;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import org.siltbench.calc.quantity.Mass;

/**
 * The hand by words, one act a line: {@code put 0.11234 moist 0.2 5 out 30}, {@code filter ID
 * STATUS warm 0.3 60}, {@code off}, {@code touch}, {@code door open}, {@code zero}, {@code print}.
 */
public final class HandCommands {

  private static final String ACTS =
      "put GRAMS, filter ID STATUS (each with: moist MG_PER_MIN MINUTES, out SECONDS, warm MG"
          + " SECONDS, static MG), off, touch, door open|close, zero, print";

  private final Hand hand;
  private final PracticeTruth truth;

  /** Words for a hand; filters have the truths given. */
  public HandCommands(Hand hand, PracticeTruth truth) {
    this.hand = hand;
    this.truth = truth;
  }

  /**
   * Does what one line says.
   *
   * @throws IllegalArgumentException if it cannot be read, with what could be said instead
   */
  public void run(String line) {
    Deque<String> words = new ArrayDeque<>(Arrays.asList(line.strip().split("\\s+")));
    act(word(words), words);
    if (!words.isEmpty()) {
      throw new IllegalArgumentException("too many words: " + String.join(" ", words));
    }
  }

  private void act(String verb, Deque<String> words) {
    switch (verb) {
      case "put" -> hand.put(load(Mass.ofGrams(word(words)), words));
      case "filter" -> hand.put(load(truth.of(word(words), word(words)), words));
      case "off" -> hand.takeOff();
      case "touch" -> hand.touch();
      case "door" -> door(word(words));
      case "zero" -> hand.zero();
      case "print" -> hand.print();
      default -> throw new IllegalArgumentException("unknown \"" + verb + "\": say " + ACTS);
    }
  }

  private void door(String how) {
    switch (how) {
      case "open" -> hand.openDoor();
      case "close" -> hand.closeDoor();
      default -> throw new IllegalArgumentException("a door can open or close, not " + how);
    }
  }

  private static Load load(Mass mass, Deque<String> words) {
    Load load = Load.of(mass);
    while (!words.isEmpty()) {
      load = with(load, word(words), words);
    }
    return load;
  }

  private static Load with(Load load, String what, Deque<String> words) {
    return switch (what) {
      case "moist" -> load.moist(number(words), number(words), load.outFor());
      case "out" ->
          load.moist(
              load.moistureMgPerMin(),
              load.moistureMinutes(),
              Duration.ofMillis((long) (1000 * number(words))));
      case "warm" -> load.warm(number(words), number(words));
      case "static" -> load.charged(number(words));
      default -> throw new IllegalArgumentException("unknown \"" + what + "\": say " + ACTS);
    };
  }

  private static String word(Deque<String> words) {
    String word = words.poll();
    if (word == null || word.isEmpty()) {
      throw new IllegalArgumentException("a word is missing: say " + ACTS);
    }
    return word;
  }

  private static double number(Deque<String> words) {
    String word = word(words);
    double number = Double.parseDouble(word);
    if (!(number >= 0 && number < 1e6)) {
      throw new IllegalArgumentException("not a number of 0 or more: " + word);
    }
    return number;
  }
}
