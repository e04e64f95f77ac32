package org.siltbench.station.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.siltbench.station.Problem;

/** The columns of a table. */
final class Header {

  private final Path file;
  private final List<String> names;
  private final Map<String, Integer> places;
  private final boolean decimalComma;

  private Header(Path file, List<String> names, Map<String, Integer> places, boolean comma) {
    this.file = file;
    this.names = names;
    this.places = places;
    this.decimalComma = comma;
  }

  static Header of(Path file, List<String> cells, char separator) {
    List<String> names = new ArrayList<>();
    Map<String, Integer> places = new HashMap<>();
    for (int i = 0; i < cells.size(); i++) {
      String name = cells.get(i).strip();
      names.add(name);
      Integer before = places.putIfAbsent(name.toLowerCase(Locale.ROOT), i);
      if (before != null && !name.isEmpty()) {
        throw new Problem.WrongUse(TableSays.SAME_NAME, file, before + 1, i + 1, name);
      }
    }
    return new Header(file, List.copyOf(names), places, separator != ',');
  }

  Path file() {
    return file;
  }

  List<String> names() {
    return names;
  }

  int indexOf(String name) {
    return places.getOrDefault(name, -1);
  }

  /** True if cells are not separated by commas, so that a comma can be a decimal mark. */
  boolean decimalComma() {
    return decimalComma;
  }
}
