package org.siltbench.station.work.correct;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.SampleRecord;
import org.siltbench.station.said.Said;

/** The receipt table's rule on volumes holds after a correction too: one way or the other. */
final class SoundVolumes {

  private SoundVolumes() {}

  static void check(Entry entry, Map<String, @Nullable Object> values) {
    if (!entry.kind().equals("sample.received")) {
      return;
    }
    Map<String, @Nullable Object> after = new LinkedHashMap<>(entry.data());
    after.putAll(values);
    boolean portions = after.get("portions_ml") != null;
    if (portions && after.get("volume_ml") != null) {
      throw unsound(CorrectSays.BOTH_SET);
    }
    if (!portions && after.get("left_ml") != null) {
      throw unsound(CorrectSays.LEFT_ALONE);
    }
    requirePositive(entry, after);
  }

  private static void requirePositive(Entry entry, Map<String, @Nullable Object> after) {
    SampleRecord record = SampleRecord.of(entry.ref(), after);
    if (record.volume().isPresent() && !record.volume().get().isPositive()) {
      throw unsound(CorrectSays.MORE_LEFT);
    }
  }

  private static Problem.WrongUse unsound(CorrectSays what) {
    return new Problem.WrongUse(CorrectSays.VOLUMES, Said.of(what));
  }
}
