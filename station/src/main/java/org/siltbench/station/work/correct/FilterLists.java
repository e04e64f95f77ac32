package org.siltbench.station.work.correct;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.Role;

/** Reaches one filter's row in the list of an entry: {@code filters.ID.dish}. */
final class FilterLists {

  private static final Pattern PATH = Pattern.compile("filters\\.([^.]+)\\.(dish|role)");

  private FilterLists() {}

  static boolean reaches(String field) {
    return PATH.matcher(field).matches();
  }

  /** The whole list with one value changed, on top of what this correction has set so far. */
  static List<Map<String, @Nullable Object>> with(
      Entry entry, Map<String, @Nullable Object> values, String field, String text) {
    Matcher path = PATH.matcher(field);
    if (!path.matches()) {
      throw new IllegalArgumentException(field);
    }
    Fields before = values.containsKey("filters") ? Fields.of(values) : Fields.of(entry);
    List<Map<String, @Nullable Object>> out = new ArrayList<>();
    boolean found = false;
    for (Fields row : before.rows("filters")) {
      Map<String, @Nullable Object> copy = new LinkedHashMap<>(row.all());
      if (row.text("filter").equals(path.group(1)) && copy.containsKey(path.group(2))) {
        found = true;
        copy.put(path.group(2), value(path.group(2), text));
      }
      out.add(copy);
    }
    if (!found) {
      throw new Problem.WrongUse(CorrectSays.NOT_LISTED, entry.ref(), path.group(2), path.group(1));
    }
    return out;
  }

  private static String value(String name, String text) {
    if (name.equals("dish")) {
      return text.strip();
    }
    try {
      return Role.of(text).code();
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(CorrectSays.NO_ROLE, text);
    }
  }
}
