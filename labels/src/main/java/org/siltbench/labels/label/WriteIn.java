package org.siltbench.labels.label;

import java.util.ArrayList;
import java.util.List;

/** A box to write in, with the least width that a pencil in a glove needs. */
enum WriteIn {
  SITE("site", "", 24, 3),
  DATE("date", "", 21, 4),
  TIME("time", "", 17, 2),
  VOLUME("volume", "mL", 21, 1),
  INITIALS("initials", "", 14, 5),
  REMARKS("remarks", "", 40, 6);

  /** The least height of a row. */
  static final double LEAST_PITCH = 7;

  /** A row that is comfortable in gloves. */
  static final double GOOD_PITCH = 8.5;

  /** A row taller than this gains nothing. */
  static final double MOST_PITCH = 11;

  private static final int MOST_ROWS = 4;

  private final String caption;
  private final String unit;
  private final double least;
  private final int rank;

  WriteIn(String caption, String unit, double least, int rank) {
    this.caption = caption;
    this.unit = unit;
    this.least = least;
    this.rank = rank;
  }

  String caption() {
    return caption;
  }

  String unit() {
    return unit;
  }

  double least() {
    return least;
  }

  /** The boxes that fit a number of rows of a width, the most needed first. */
  static List<List<WriteIn>> rows(int rows, double width) {
    int most = rows < MOST_ROWS ? values().length - 1 : values().length;
    for (int keep = most; keep > 0; keep--) {
      List<List<WriteIn>> packed = pack(ranked(keep), width);
      if (packed.size() <= rows) {
        return spread(packed, rows);
      }
    }
    return List.of();
  }

  /** How many rows a label of a height should have at most. */
  static int rowsFor(double height) {
    int most = height < 60 ? MOST_ROWS - 1 : MOST_ROWS;
    return Math.min(most, (int) (0.58 * height / LEAST_PITCH + 0.1));
  }

  /** A comfortable height for a number of rows on a label of a height. */
  static double goodPitch(int rows, double height) {
    double share = rows == 1 ? 0 : 0.55 * height / rows;
    return Math.min(MOST_PITCH, Math.max(GOOD_PITCH, share));
  }

  private static List<WriteIn> ranked(int keep) {
    List<WriteIn> out = new ArrayList<>(List.of(values()));
    out.removeIf(field -> field.rank > keep);
    return out;
  }

  private static List<List<WriteIn>> pack(List<WriteIn> fields, double width) {
    List<List<WriteIn>> rows = new ArrayList<>();
    double used = Double.MAX_VALUE;
    for (WriteIn field : fields) {
      if (used + field.least > width || field == REMARKS) {
        rows.add(new ArrayList<>());
        used = 0;
      }
      rows.get(rows.size() - 1).add(field);
      used += field.least;
    }
    return rows;
  }

  /** Shares the boxes out over the rows so that the fullest row is as loose as it can be. */
  private static List<List<WriteIn>> spread(List<List<WriteIn>> packed, int rows) {
    List<WriteIn> fields = packed.stream().flatMap(List::stream).toList();
    return rows <= packed.size() ? packed : shared(fields, Math.min(rows, fields.size()));
  }

  private static List<List<WriteIn>> shared(List<WriteIn> fields, int rows) {
    if (rows == 1) {
      return List.of(fields);
    }
    List<List<WriteIn>> best = List.of();
    for (int cut = 1; cut <= fields.size() - rows + 1; cut++) {
      List<List<WriteIn>> tried = new ArrayList<>();
      tried.add(fields.subList(0, cut));
      tried.addAll(shared(fields.subList(cut, fields.size()), rows - 1));
      if (best.isEmpty() || fullest(tried) < fullest(best)) {
        best = tried;
      }
    }
    return best;
  }

  private static double fullest(List<List<WriteIn>> rows) {
    return rows.stream()
        .mapToDouble(row -> row.stream().mapToDouble(WriteIn::least).sum())
        .max()
        .orElse(0);
  }
}
