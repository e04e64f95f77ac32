package org.siltbench.labels.media;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.reason.Reason;
import org.siltbench.labels.PaperProblem;
import org.siltbench.labels.PapersSay;

/** The media file: a few named lengths in millimetres, one a line. */
public final class MediaText {

  private static final Set<String> KEYS =
      Set.of(
          "name", "form", "page", "grid", "first", "pitch", "label", "corner", "safe", "move",
          "scale");
  private static final double[] NO_MOVE = {0, 0};
  private static final double[] NO_SCALE = {1, 1};
  private static final double[] ONE_MM = {1};

  private final String source;
  private final Map<String, Line> lines = new LinkedHashMap<>();

  private record Line(int number, String value) {}

  private MediaText(String source) {
    this.source = source;
  }

  /**
   * Reads a media file's text.
   *
   * @param text the file's content
   * @param source what to call it in a message
   * @throws PaperProblem naming line, key and what was expected
   */
  public static Media parse(String text, String source) {
    MediaText file = new MediaText(source);
    List<String> all = text.lines().toList();
    for (int i = 0; i < all.size(); i++) {
      file.take(i + 1, all.get(i));
    }
    return file.media();
  }

  private void take(int number, String raw) {
    int comment = raw.indexOf('#');
    String line = (comment < 0 ? raw : raw.substring(0, comment)).replace("\uFEFF", "").strip();
    if (line.isEmpty()) {
      return;
    }
    int colon = line.indexOf(':');
    if (colon < 0) {
      throw wrong(number, PapersSay.NO_COLON.with(), PapersSay.WRITE_KEY_VALUE.with());
    }
    String key = line.substring(0, colon).strip();
    if (!KEYS.contains(key)) {
      throw wrong(
          number,
          PapersSay.UNKNOWN_KEY.with(key),
          PapersSay.KEYS_ARE.with(String.join(", ", sortedKeys())));
    }
    if (lines.put(key, new Line(number, line.substring(colon + 1).strip())) != null) {
      throw wrong(number, PapersSay.TWICE.with(key), PapersSay.KEEP_ONE.with());
    }
  }

  private static List<String> sortedKeys() {
    return KEYS.stream().sorted().toList();
  }

  private Media media() {
    boolean roll = form() == Form.ROLL;
    double[] label = lengths("label", 2, null);
    double[] page = lengths("page", 2, roll ? label : null);
    double[] grid = lengths("grid", 2, roll ? NO_SCALE : null);
    double[] first = lengths("first", 2, roll ? NO_MOVE : null);
    double[] pitch = lengths("pitch", 2, label);
    double[] move = lengths("move", 2, NO_MOVE);
    double[] scale = lengths("scale", 2, NO_SCALE);
    return new Media(
        name(),
        form(),
        page[0],
        page[1],
        count("grid", grid[0]),
        count("grid", grid[1]),
        first[0],
        first[1],
        pitch[0],
        pitch[1],
        label[0],
        label[1],
        lengths("corner", 1, ONE_MM)[0],
        lengths("safe", 1, ONE_MM)[0],
        calibration(move, scale));
  }

  private Calibration calibration(double[] move, double[] scale) {
    try {
      return new Calibration(move[0], move[1], scale[0], scale[1]);
    } catch (IllegalArgumentException e) {
      throw new PaperProblem(
          PapersSay.IN_FILE.with(source, e),
          PapersSay.NOTHING.with(),
          PapersSay.MEASURE_RULER.with(),
          e);
    }
  }

  private String name() {
    Line line = lines.get("name");
    return line == null ? source : line.value();
  }

  private Form form() {
    Line line = lines.get("form");
    if (line == null) {
      throw missing("form", PapersSay.ROLL_OR.with());
    }
    return switch (line.value()) {
      case "roll" -> Form.ROLL;
      case "sheet" -> Form.SHEET;
      default ->
          throw wrong(line.number(), PapersSay.SAYS.with(line.value()), PapersSay.SAY_FORM.with());
    };
  }

  private int count(String key, double value) {
    if (value != Math.rint(value) || value < 1 || value > 200) {
      throw wrong(numberOf(key), PapersSay.WHOLE_NUMBERS.with(), PapersSay.COLUMNS_ROWS.with());
    }
    return (int) value;
  }

  private int numberOf(String key) {
    Line line = lines.get(key);
    return line == null ? 0 : line.number();
  }

  private double[] lengths(String key, int howMany, double @Nullable [] otherwise) {
    Line line = lines.get(key);
    if (line == null) {
      if (otherwise == null) {
        throw missing(key, howMany == 2 ? key + ": 50 25" : key + ": 1");
      }
      return otherwise.clone();
    }
    String[] parts = line.value().split("\\s+");
    if (parts.length != howMany) {
      throw wrong(
          line.number(),
          (howMany == 1 ? PapersSay.ONE_NUMBER : PapersSay.SEVERAL_NUMBERS).with(key, howMany),
          PapersSay.PART_NUMBERS.with());
    }
    double[] out = new double[howMany];
    for (int i = 0; i < howMany; i++) {
      out[i] = number(line.number(), parts[i]);
    }
    return out;
  }

  private double number(int line, String text) {
    if (!text.matches("-?[0-9]{1,4}(\\.[0-9]{1,6})?")) {
      throw wrong(line, PapersSay.NO_NUMBER.with(text), PapersSay.USE_DIGITS.with());
    }
    return Double.parseDouble(text);
  }

  private PaperProblem wrong(int line, Reason what, Reason next) {
    return new PaperProblem(PapersSay.AT_LINE.with(source, line, what), next);
  }

  private PaperProblem missing(String key, Object example) {
    return new PaperProblem(PapersSay.NO_LINE.with(source, key), PapersSay.ADD_ONE.with(example));
  }

  /** Writes stock as a media file; {@link #parse} gives the same stock back. */
  public static String write(Media media) {
    StringBuilder out = new StringBuilder(300);
    Calibration c = media.calibration();
    line(out, "name", media.name());
    line(out, "form", media.form() == Form.ROLL ? "roll" : "sheet");
    line(out, "page", mm(media.pageWidth()) + " " + mm(media.pageHeight()));
    line(out, "grid", media.columns() + " " + media.rows());
    line(out, "first", mm(media.left()) + " " + mm(media.top()));
    line(out, "pitch", mm(media.pitchAcross()) + " " + mm(media.pitchDown()));
    line(out, "label", mm(media.labelWidth()) + " " + mm(media.labelHeight()));
    line(out, "corner", mm(media.corner()));
    line(out, "safe", mm(media.safe()));
    if (!c.isNone()) {
      line(out, "move", mm(c.moveRight()) + " " + mm(c.moveDown()));
      line(out, "scale", mm(c.scaleAcross()) + " " + mm(c.scaleDown()));
    }
    return out.toString();
  }

  private static void line(StringBuilder out, String key, String value) {
    out.append(key).append(": ").append(value).append('\n');
  }

  private static String mm(double value) {
    return BigDecimal.valueOf(Math.round(value * 1e6), 6).stripTrailingZeros().toPlainString();
  }
}
