package org.siltbench.balance.format;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.format.LineFormat.MarkText;
import org.siltbench.balance.format.LineFormat.NumberShape;
import org.siltbench.balance.format.LineFormat.Talk;
import org.siltbench.balance.format.LineFormat.Talk.How;
import org.siltbench.balance.format.LineFormat.UnitText;
import org.siltbench.balance.format.LineFormat.Units;
import org.siltbench.calc.reason.Unfit;

/** The keys of a line format file, gathered line by line. */
final class FormatKeys {

  private static final String KEYS =
      "name, ends, line, length, point, decimals, unit, supply, no unit, units, mark, text, talks,"
          + " ask, tare";
  static final String FIRST_ONLY = "first seen only";

  private final Set<String> seen = new HashSet<>();
  private final List<UnitText> units = new ArrayList<>();
  private final List<MarkText> marks = new ArrayList<>();
  private final List<MarkText> texts = new ArrayList<>();
  private String name = "unnamed";
  private Terminator ends = Terminator.ANY;
  private @Nullable List<Part> line;
  private int length;
  private char point = '.';
  private int least;
  private int most = 9;
  private @Nullable MassUnit supplied;
  private Meaning missing = Meaning.NOTHING;
  private boolean firstOnly;
  private How how = How.BY_ITSELF;
  private String ask = "";
  private String tare = "";

  /** Takes one line of the file. */
  void take(String text) {
    if (text.startsWith("unit '") || text.startsWith("mark '") || text.startsWith("text '")) {
      takeQuoted(text.substring(0, 4), text, 5);
      return;
    }
    int colon = text.indexOf(':');
    if (colon < 0) {
      throw new Unfit(FormatFileSays.NO_KEY, KEYS);
    }
    String key = text.substring(0, colon).strip();
    if (!seen.add(key)) {
      throw new Unfit(FormatFileSays.KEY_TWICE, key);
    }
    takeValue(key, text.substring(colon + 1).strip());
  }

  private void takeQuoted(String key, String text, int from) {
    int end = Quoted.end(text, from);
    String quoted = Quoted.unquote(text.substring(from, end));
    String rest = text.substring(end).strip();
    if (!rest.startsWith(":")) {
      throw new Unfit(FormatFileSays.NO_COLON);
    }
    String value = rest.substring(1).strip();
    switch (key) {
      case "unit" -> units.add(new UnitText(quoted, unit(value)));
      case "mark" -> marks.add(new MarkText(quoted, meaning(value)));
      default -> texts.add(new MarkText(quoted, meaning(value)));
    }
  }

  private void takeValue(String key, String value) {
    switch (key) {
      case "name" -> name = named(value);
      case "ends" -> ends = value.equals("any") ? Terminator.ANY : terminator(value);
      case "line" -> line = PartText.parse(value);
      case "length" -> length = whole(key, value, LineReader.MAX_LINE);
      case "point" -> point = point(value);
      case "decimals" -> decimals(value);
      case "talks" -> how = how(value);
      case "ask" -> ask = ControlText.parse(value);
      case "tare" -> tare = ControlText.parse(value);
      default -> takeUnitKey(key, value);
    }
  }

  private void takeUnitKey(String key, String value) {
    switch (key) {
      case "supply" -> supplied = unit(value);
      case "no unit" -> missing = meaning(value);
      case "units" -> firstOnly = firstOnly(value);
      default -> throw new Unfit(FormatFileSays.UNKNOWN_KEY, key, KEYS);
    }
  }

  private static Terminator terminator(String value) {
    String text = ControlText.parse(value);
    if (text.isEmpty()) {
      throw new Unfit(FormatFileSays.ENDS);
    }
    return new Terminator(text);
  }

  private static String named(String value) {
    if (!FormatShelf.isName(value)) {
      throw new Unfit(FormatFileSays.NAME);
    }
    return value;
  }

  private static char point(String value) {
    return switch (value) {
      case "." -> '.';
      case "," -> ',';
      case "either" -> NumberShape.EITHER;
      default -> throw new Unfit(FormatFileSays.POINT);
    };
  }

  private static boolean firstOnly(String value) {
    if (!value.equals(FIRST_ONLY)) {
      throw new Unfit(FormatFileSays.UNITS, FIRST_ONLY);
    }
    return true;
  }

  private void decimals(String value) {
    String[] ends = value.split("-", -1);
    if (ends.length > 2) {
      throw new Unfit(FormatFileSays.DECIMALS);
    }
    least = whole("decimals", ends[0].strip(), 9);
    most = whole("decimals", ends[ends.length - 1].strip(), 9);
  }

  private static int whole(String key, String value, int most) {
    if (!value.matches("[0-9]{1,4}") || Integer.parseInt(value) > most) {
      throw new Unfit(FormatFileSays.WHOLE, key, most);
    }
    return Integer.parseInt(value);
  }

  private static MassUnit unit(String value) {
    return MassUnit.ofSymbol(value).orElseThrow(() -> new Unfit(FormatFileSays.UNIT, value));
  }

  private static Meaning meaning(String value) {
    return Meaning.ofWord(value)
        .orElseThrow(
            () ->
                new Unfit(
                    FormatFileSays.MEANING,
                    Arrays.stream(Meaning.values())
                        .map(Meaning::word)
                        .collect(Collectors.joining(", ")),
                    value));
  }

  private static How how(String value) {
    return Arrays.stream(How.values())
        .filter(h -> h.words().equals(value))
        .findFirst()
        .orElseThrow(
            () ->
                new Unfit(
                    FormatFileSays.TALKS,
                    How.BY_ITSELF.words(),
                    How.ON_KEY.words(),
                    How.WHEN_ASKED.words()));
  }

  LineFormat toFormat() {
    if (line == null) {
      throw new Unfit(FormatFileSays.NO_LINE);
    }
    return new LineFormat(
        name,
        ends,
        line,
        length,
        new NumberShape(point, least, most),
        new Units(units, supplied, missing, firstOnly),
        marks,
        texts,
        new Talk(how, ask, tare));
  }
}
