package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The columns of the table that {@code calc} reads: {@code filter, role, sample, pair, pair_kind,
 * pre_g, post_g} or {@code post1_g, post2_g, …, volume_ml, volume_u_ml, taken, analysed}, and those
 * of {@link ExtraCells}. The order is free; columns that are not known here ({@code site}, {@code
 * time}) are left to the caller. Their places are resolved once.
 */
public final class InputColumns {

  private final Map<String, Integer> places = new HashMap<>();
  private final int filter;
  private final int role;
  private final int sample;
  private final int pair;
  private final int pairKind;
  private final int pre;
  private final int post;
  private final int volume;
  private final int volumeU;
  private final int taken;
  private final int analysed;
  private final int[] posts;
  private final String[] postNames;
  private final ExtraCells extras;

  /**
   * Understands a header. Case and blanks around the words do not matter.
   *
   * @param line the header's line, for messages
   * @throws InputFaults if a required column is missing (filter, role, pre_g, and post_g or
   *     post1_g) or one occurs twice
   */
  public InputColumns(List<String> header, long line) {
    List<RowFault> faults = new ArrayList<>();
    Map<Integer, Integer> numbered = new TreeMap<>();
    for (int i = 0; i < header.size(); i++) {
      String word = header.get(i).replace("\uFEFF", "").strip().toLowerCase(Locale.ROOT);
      if (!word.isEmpty() && places.put(word, i) != null) {
        faults.add(new RowFault(line, word, word, "each column once"));
      }
      if (word.matches("post[1-9][0-9]?_g")) {
        numbered.put(Integer.parseInt(word.substring(4, word.length() - 2)), i);
      }
    }
    for (String required : List.of("filter", "role", "pre_g")) {
      require(faults, line, required, places.containsKey(required));
    }
    require(faults, line, "post_g", places.containsKey("post_g") || numbered.containsKey(1));
    if (!faults.isEmpty()) {
      throw new InputFaults(faults, faults.size());
    }
    this.filter = place("filter");
    this.role = place("role");
    this.sample = place("sample");
    this.pair = place("pair");
    this.pairKind = place("pair_kind");
    this.pre = place("pre_g");
    this.post = place("post_g");
    this.volume = place("volume_ml");
    this.volumeU = place("volume_u_ml");
    this.taken = place("taken");
    this.analysed = place("analysed");
    this.posts = numbered.values().stream().mapToInt(i -> i).toArray();
    this.postNames = numbered.keySet().stream().map(n -> "post" + n + "_g").toArray(String[]::new);
    this.extras = new ExtraCells(places);
  }

  private int place(String column) {
    return places.getOrDefault(column, -1);
  }

  private static void require(List<RowFault> faults, long line, String column, boolean there) {
    if (!there) {
      String or = column.equals("post_g") ? " (or post1_g, post2_g, …)" : "";
      faults.add(new RowFault(line, column, "", "this column" + or + " in the header"));
    }
  }

  /**
   * True if no row can depend on another by the table's columns: none of {@code sample}, {@code
   * pair} and {@code ignited_g}.
   */
  public boolean rowsStandAlone() {
    return sample < 0 && pair < 0 && !places.containsKey("ignited_g");
  }

  /** True if the table has a column of that name. */
  boolean has(String column) {
    return places.containsKey(column);
  }

  /** Reads one row; faults are added to the list, and a row with faults is not to be used. */
  public InputRow read(List<String> fields, long line, List<RowFault> faults) {
    RowCells cells = new RowCells(fields, line, faults);
    String name = cells.text(filter);
    RowRole is = cells.role(role);
    InputRow.Builder row = InputRow.of(name, is).line(line).pre(cells.mass("pre_g", pre));
    if (sample >= 0) {
      row.sample(cells.text(sample));
    }
    if (pair >= 0) {
      row.pair(cells.text(pair), cells.text(pairKind));
    }
    if (analysed >= 0) {
      row.analysed(cells.text(analysed));
    }
    row.volume(cells.volume("volume_ml", volume)).volumeU(cells.volumeU(volumeU));
    row.taken(cells.taken(taken));
    cells.posts(row, post, posts, postNames);
    if (extras.any()) {
      row.extras(extras.read(cells));
    }
    return row.resolution(cells.resolution()).build();
  }
}
