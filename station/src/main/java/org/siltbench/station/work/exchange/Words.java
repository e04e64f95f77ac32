package org.siltbench.station.work.exchange;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** Words in cells that stand for a word of the receipt table. Others go on as they are. */
final class Words {

  private static final Map<String, Map<String, String>> KNOWN = new HashMap<>();
  private static final Map<String, Set<String>> OPEN =
      Map.of(
          "role",
              Set.of("blank", "bl", "blindwert", "blanc", "leerwert", "b", "duplicate", "dup", "d"),
          "condition",
              Set.of("gerissen", "dechire", "ripped", "damaged", "beschadigt", "wet", "roto"),
          "pair_kind", Set.of("duplicate", "dup", "replicate", "split"));

  static {
    learn(
        "rinse",
        "yes: yes, y, x, ja, j, oui, o, si, s, true, 1, ✓, ✔; no: no, n, nein, non, false, 0");
    learn(
        "taken",
        "aliquot: aliquot, aliquote, subsample, teilprobe; whole: whole, whole bottle, whole sample, ganze flasche, entire bottle");
    learn(
        "role",
        "sample: sample, s, probe, p, echantillon, muestra, normal; field-blank: field blank, fb, fieldblank,"
            + " feldblindwert, feldblank, blanc de terrain; trip-blank: trip blank, tb, tripblank,"
            + " transportblindwert, blanc de transport; method-blank: method blank, mb, lab blank,"
            + " methodenblindwert; control: control, control filter, kontrollfilter; reference:"
            + " reference, reference sample, referenzprobe; spare: spare, reserve, ersatz");
    learn(
        "condition",
        "ok: ok, okay, good, fine, gut, in ordnung, i o, bon, bien, normal, -; torn-loss: torn with loss, torn loss;"
            + " stuck: stuck, klebt, colle; leaked: leaked, leak, ausgelaufen; mould: mould, mold,"
            + " mouldy, moldy, schimmel, moisi; debris-removed: leaf removed, insect removed, debris removed");
    learn(
        "left_to",
        "discarded: discarded, thrown away, verworfen, weg, jete; next: next, next filter, nachster");
  }

  private Words() {}

  private static void learn(String column, String text) {
    Map<String, String> words = KNOWN.computeIfAbsent(column, key -> new HashMap<>());
    for (String group : text.split(";")) {
      String meaning = group.substring(0, group.indexOf(':')).strip();
      for (String word : group.substring(group.indexOf(':') + 1).split(",")) {
        words.put(key(word), meaning);
      }
    }
  }

  private static String key(String word) {
    String plain = Columns.plain(word);
    return plain.isEmpty() ? word.strip() : plain;
  }

  /** The word of the receipt table, or the cell as it is. */
  static String of(String column, String cell) {
    return KNOWN.getOrDefault(column, Map.of()).getOrDefault(key(cell), cell);
  }

  /** True if the word could mean several things. */
  static boolean isOpen(String column, String cell) {
    return OPEN.getOrDefault(column, Set.of()).contains(key(cell));
  }
}
