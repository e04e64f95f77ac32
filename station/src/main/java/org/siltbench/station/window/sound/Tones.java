package org.siltbench.station.window.sound;

import java.util.Map;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Cues.Cue;

/**
 * A short tune for each cue, told apart by its melody: up is recorded, down is refused, the same
 * note twice asks to look. A computer without a loudspeaker stays silent; the light is there.
 */
public final class Tones implements Cues.Sound {

  static final int RATE = 22_050;
  private static final double NOTE_S = 0.11;
  private static final double FADE_S = 0.012;
  private static final double LOUD = 0.45;
  private static final AudioFormat FORMAT = new AudioFormat(RATE, 16, 1, true, false);

  private static final Map<Cue, double[]> TUNES =
      Map.of(
          Cue.NONE,
          new double[] {},
          Cue.RECORDED,
          new double[] {659.3, 987.8},
          Cue.REFUSED,
          new double[] {311.1, 207.7, 207.7},
          Cue.ATTENTION,
          new double[] {523.3, 0, 523.3});

  private final Executor thread;
  private final BooleanSupplier wanted;
  private final Consumer<Words> silent;
  private boolean told;

  /**
   * Tones on a thread of the executor.
   *
   * @param wanted false while the person wants no sound
   * @param silent told once, why there is no sound
   */
  public Tones(Executor thread, BooleanSupplier wanted, Consumer<Words> silent) {
    this.thread = thread;
    this.wanted = wanted;
    this.silent = silent;
  }

  @Override
  public void play(Cue cue) {
    byte[] wave = wave(cue);
    if (wave.length > 0 && wanted.getAsBoolean()) {
      thread.execute(() -> sound(wave));
    }
  }

  private void sound(byte[] wave) {
    try (SourceDataLine line = AudioSystem.getSourceDataLine(FORMAT)) {
      line.open(FORMAT);
      line.start();
      line.write(wave, 0, wave.length);
      line.drain();
    } catch (LineUnavailableException | IllegalArgumentException e) {
      tell(e);
    }
  }

  private synchronized void tell(Exception e) {
    if (!told) {
      told = true;
      silent.accept(Elsewhere.words(e));
    }
  }

  /** The samples of a cue, 16 bits little-endian; each note fades in and out. */
  static byte[] wave(Cue cue) {
    double[] notes = TUNES.getOrDefault(cue, new double[] {});
    int each = (int) (RATE * NOTE_S);
    byte[] wave = new byte[notes.length * each * 2];
    for (int i = 0; i < notes.length * each; i++) {
      double in = (i % each) / (double) RATE;
      double fade = Math.min(1, Math.min(in, NOTE_S - in) / FADE_S);
      double value = Math.sin(2 * Math.PI * notes[i / each] * in) * Math.max(0, fade) * LOUD;
      int sample = (int) Math.round(value * Short.MAX_VALUE);
      wave[2 * i] = (byte) sample;
      wave[2 * i + 1] = (byte) (sample >> 8);
    }
    return wave;
  }
}
