package org.siltbench.station.window.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.siltbench.station.window.desk.Cues.Cue;

/** What is heard at each cue. */
class TonesTest {

  /** Zero crossings upwards a second, over a stretch: the frequency, heard without a library. */
  private static double frequency(byte[] wave, double from, double to) {
    int crossings = 0;
    int last = 0;
    for (int i = (int) (from * Tones.RATE); i < to * Tones.RATE; i++) {
      int sample = (wave[2 * i] & 0xff) | wave[2 * i + 1] << 8;
      crossings += last < 0 && sample >= 0 ? 1 : 0;
      last = sample;
    }
    return crossings / (to - from);
  }

  @Test
  void recorded_goes_up_and_refused_goes_down() {
    byte[] up = Tones.wave(Cue.RECORDED);
    byte[] down = Tones.wave(Cue.REFUSED);
    assertTrue(frequency(up, 0.02, 0.09) < frequency(up, 0.13, 0.20));
    assertTrue(frequency(down, 0.02, 0.09) > frequency(down, 0.13, 0.20));
  }

  @Test
  void no_cue_begins_or_ends_with_a_click() {
    for (Cue cue : List.of(Cue.RECORDED, Cue.REFUSED, Cue.ATTENTION)) {
      byte[] wave = Tones.wave(cue);
      assertEquals(0, wave[0]);
      assertTrue(Math.abs((int) wave[wave.length - 1]) <= 1, cue.name());
    }
    assertArrayEquals(new byte[0], Tones.wave(Cue.NONE));
  }

  @Test
  void nothing_is_played_where_no_sound_is_wanted() {
    List<Runnable> played = new ArrayList<>();
    new Tones(played::add, () -> false, why -> {}).play(Cue.RECORDED);
    assertEquals(0, played.size());
    new Tones(played::add, () -> true, why -> {}).play(Cue.RECORDED);
    assertEquals(1, played.size());
  }
}
