package org.siltbench.station.window.flag;

import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.work.results.ResultSheet.Seen;
import org.siltbench.station.work.results.ResultSheet.Weight;

/** Says what a flag means, and how much it matters. */
public final class FlagWords {

  private final Texts texts;

  /** The words in the desk's language. */
  public FlagWords(Desk desk) {
    this.texts = desk.texts(FlagWords.class);
  }

  /** Its short name; tables in files have its word instead, the same in every language. */
  public String name(Seen flag) {
    return texts.get("name." + flag.word());
  }

  /** What the flag means, as a sentence. */
  public String means(Seen flag) {
    return texts.say(flag.means());
  }

  /** How much it matters, in a word. */
  public String weight(Weight weight) {
    return texts.get("weight." + weight.name());
  }

  /** Its tone. */
  public static Tone tone(Weight weight) {
    return switch (weight) {
      case NOTE -> Tone.PLAIN;
      case WARNING -> Tone.WARN;
      case STOP -> Tone.BAD;
    };
  }

  /** Its shape. */
  public static Shape shape(Weight weight) {
    return switch (weight) {
      case NOTE -> Shape.DOT;
      case WARNING -> Shape.TRIANGLE;
      case STOP -> Shape.CROSS;
    };
  }
}
