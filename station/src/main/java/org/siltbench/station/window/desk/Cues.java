package org.siltbench.station.window.desk;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** What a person who looks at the tweezers hears and sees from the corner of the eye. */
public final class Cues {

  /** The cues; each has a sound and a look of its own. */
  public enum Cue {
    NONE,
    RECORDED,
    REFUSED,
    ATTENTION
  }

  /** Plays the sound of a cue. */
  public interface Sound {
    /** Plays it and returns at once. */
    void play(Cue cue);
  }

  private final Sound sound;
  private final ReadOnlyObjectWrapper<Cue> seen = new ReadOnlyObjectWrapper<>(Cue.NONE);

  /** Cues with a sound. */
  public Cues(Sound sound) {
    this.sound = sound;
  }

  /** The cue that is shown now. */
  public ReadOnlyObjectProperty<Cue> seen() {
    return seen.getReadOnlyProperty();
  }

  /** Gives a cue; it is shown until the next one or {@link #rest()}. */
  public void give(Cue cue) {
    seen.set(Cue.NONE);
    seen.set(cue);
    sound.play(cue);
  }

  /** Shows none. */
  public void rest() {
    seen.set(Cue.NONE);
  }
}
