package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Taken;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;

/**
 * The columns of the table that {@code calc} reads: {@code filter, role, sample, pair, pair_kind,
 * pre_g, post_g} or {@code post1_g, post2_g, …, volume_ml, volume_u_ml, taken}. The order is free;
 * columns that are not known here ({@code site}, {@code time}) are left to the caller.
 */
public final class InputColumns {

  private static final String MASS = "a mass in g as displayed, as 0.11234";

  private final Map<String, Integer> places = new HashMap<>();
  private final Map<Integer, Integer> posts = new TreeMap<>();

  /**
   * Understands a header. Case and blanks around the words do not matter.
   *
   * @param line the header's line, for messages
   * @throws InputFaults if a required column is missing (filter, role, pre_g, and post_g or
   *     post1_g) or one occurs twice
   */
  public InputColumns(List<String> header, long line) {
    List<RowFault> faults = new ArrayList<>();
    for (int i = 0; i < header.size(); i++) {
      String word = header.get(i).replace("\uFEFF", "").strip().toLowerCase(Locale.ROOT);
      if (!word.isEmpty() && places.put(word, i) != null) {
        faults.add(new RowFault(line, word, word, "each column once"));
      }
      if (word.matches("post[1-9][0-9]?_g")) {
        posts.put(Integer.parseInt(word.substring(4, word.length() - 2)), i);
      }
    }
    for (String required : List.of("filter", "role", "pre_g")) {
      require(faults, line, required, places.containsKey(required));
    }
    require(faults, line, "post_g", places.containsKey("post_g") || posts.containsKey(1));
    if (!faults.isEmpty()) {
      throw new InputFaults(faults, faults.size());
    }
  }

  private static void require(List<RowFault> faults, long line, String column, boolean there) {
    if (!there) {
      String or = column.equals("post_g") ? " (or post1_g, post2_g, …)" : "";
      faults.add(new RowFault(line, column, "", "this column" + or + " in the header"));
    }
  }

  /** Reads one row; faults are added to the list, and a row with faults is not to be used. */
  public InputRow read(List<String> fields, long line, List<RowFault> faults) {
    return new Reading(fields, line, faults).row();
  }

  /** One row being read. */
  private final class Reading {

    private final List<String> fields;
    private final long line;
    private final List<RowFault> faults;
    private int decimals = -1;

    Reading(List<String> fields, long line, List<RowFault> faults) {
      this.fields = fields;
      this.line = line;
      this.faults = faults;
    }

    InputRow row() {
      InputRow.Builder row =
          InputRow.of(text("filter"), role())
              .line(line)
              .sample(text("sample"))
              .pair(text("pair"), text("pair_kind"))
              .pre(mass("pre_g", place("pre_g")))
              .volume(volume())
              .volumeU(volumeU())
              .taken(taken());
      posts(row);
      return row.resolution(resolution()).build();
    }

    private int place(String column) {
      return places.getOrDefault(column, -1);
    }

    private String at(int place) {
      return place >= 0 && place < fields.size() ? fields.get(place).strip() : "";
    }

    private String text(String column) {
      return at(place(column));
    }

    private void fault(String column, String found, String expected) {
      faults.add(new RowFault(line, column, found, expected));
    }

    private RowRole role() {
      String word = text("role");
      RowRole role = RowRole.of(word.toLowerCase(Locale.ROOT));
      if (role == null) {
        fault("role", word, "sample, field-blank, trip-blank, method-blank, control or reference");
        return RowRole.SAMPLE;
      }
      return role;
    }

    private void posts(InputRow.Builder row) {
      Mass stated = mass("post_g", place("post_g"));
      List<Mass> judged = new ArrayList<>();
      for (Map.Entry<Integer, Integer> post : posts.entrySet()) {
        Mass mass = mass("post" + post.getKey() + "_g", post.getValue());
        if (mass != null) {
          judged.add(mass);
        }
      }
      if (stated != null && !judged.isEmpty()) {
        fault("post_g", text("post_g"), "either post_g or post1_g, post2_g, …, not both");
      } else if (stated != null) {
        row.post(stated);
      } else {
        row.posts(judged);
      }
    }

    private @Nullable Mass mass(String column, int place) {
      String text = at(place);
      if (text.isEmpty()) {
        return null;
      }
      try {
        Mass mass = Mass.ofGrams(text);
        int point = text.indexOf('.');
        decimals = Math.max(decimals, point < 0 ? 0 : text.length() - point - 1);
        return mass;
      } catch (NumberFormatException e) {
        fault(column, text, MASS);
        return null;
      }
    }

    /** The step of the finest mass in the row: a spreadsheet may have eaten trailing zeros. */
    private @Nullable Mass resolution() {
      return decimals < 0 || decimals > 9 ? null : new Mass(Math.round(Math.pow(10, 9 - decimals)));
    }

    private @Nullable Volume volume() {
      String text = text("volume_ml");
      try {
        return text.isEmpty() ? null : Volume.ofMillilitres(text);
      } catch (NumberFormatException e) {
        fault("volume_ml", text, "a volume in mL as a plain number, as 250");
        return null;
      }
    }

    private @Nullable Double volumeU() {
      String text = text("volume_u_ml");
      try {
        return text.isEmpty() ? null : Volume.ofMillilitres(text).millilitres();
      } catch (NumberFormatException e) {
        fault("volume_u_ml", text, "a standard uncertainty in mL as a plain number, as 2.5");
        return null;
      }
    }

    private @Nullable Taken taken() {
      String word = text("taken");
      for (Taken taken : Taken.values()) {
        if (taken.word().equalsIgnoreCase(word)) {
          return taken;
        }
      }
      if (!word.isEmpty()) {
        fault("taken", word, "aliquot or whole");
      }
      return null;
    }
  }
}
