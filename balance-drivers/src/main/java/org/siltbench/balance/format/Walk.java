package org.siltbench.balance.format;

/** Reads any line part by part, from left to right and without going back. */
final class Walk {

  private final Fields fields;
  private final Numbers numbers;

  Walk(Fields fields) {
    this.fields = fields;
    this.numbers = new Numbers(fields.shape);
  }

  /** Matches the whole of a line. */
  boolean match(byte[] bytes, int from, int to, Match found) {
    int length = fields.length;
    found.begin(fields.supplied);
    return (length == 0 || to - from == length || found.fail(-1, from))
        && steps(bytes, from, to, found);
  }

  private boolean steps(byte[] bytes, int from, int to, Match found) {
    int count = fields.steps.length;
    int at = from;
    for (int i = 0; i < count; i++) {
      found.begins[i] = at;
      int next = step(i, bytes, from, at, to, found);
      if (next < 0) {
        return found.fail(i, at);
      }
      at = next;
    }
    found.begins[count] = at;
    return (at == to && found.unit != Fields.NO_UNIT) || found.fail(count, at);
  }

  /** Where the part ends that begins at the given place; -1 if it is not there. */
  int step(int i, byte[] bytes, int from, int at, int to, Match found) {
    return switch (fields.steps[i]) {
      case Step.BLANKS -> blanks(bytes, at, to);
      case Step.GAP -> atLeastOne(at, blanks(bytes, at, to));
      case Step.SIGN -> sign(bytes, at, to, found);
      case Step.NUMBER -> numbers.read(bytes, at, to, found);
      case Step.UNIT -> unit(bytes, at, to, false, found);
      case Step.MARK -> mark(bytes, at, to, found);
      case Step.TEXT -> text(fields.texts[i], bytes, at, to);
      default -> rare(i, bytes, from, at, to, found);
    };
  }

  private int rare(int i, byte[] bytes, int from, int at, int to, Match found) {
    return switch (fields.steps[i]) {
      case Step.UNIT_OR_NONE -> unit(bytes, at, to, true, found);
      case Step.DIGITS -> atLeastOne(at, digits(bytes, at, to));
      case Step.WORD -> atLeastOne(at, word(bytes, at, to));
      case Step.ANY -> at + fields.counts[i] <= to ? at + fields.counts[i] : -1;
      default -> check((Part.Check) fields.parts[i], bytes, from, at, to);
    };
  }

  private static int atLeastOne(int at, int next) {
    return next > at ? next : -1;
  }

  private static int text(byte[] text, byte[] bytes, int at, int to) {
    return Choice.startsWith(bytes, at, to, text) ? at + text.length : -1;
  }

  private static int blanks(byte[] bytes, int from, int to) {
    int run = Words.spaces(Words.at(bytes, from));
    int at = Math.min(from + run, to);
    while (at < to && (bytes[at] == ' ' || bytes[at] == '\t')) {
      at++;
    }
    return at;
  }

  private static int digits(byte[] bytes, int from, int to) {
    int at = from;
    while (at < to && Words.isDigit(bytes[at])) {
      at++;
    }
    return at;
  }

  private static int word(byte[] bytes, int from, int to) {
    if (from < to && (bytes[from] == '-' || bytes[from] == '+')) {
      return from; // it may be the sign of the number
    }
    int at = from;
    while (at < to && bytes[at] > ' ' && bytes[at] != ',' && bytes[at] != ';') {
      at++;
    }
    return at;
  }

  private static int sign(byte[] bytes, int at, int to, Match found) {
    if (at < to && (bytes[at] == '-' || bytes[at] == '+')) {
      found.negative = bytes[at] == '-';
      return at + 1;
    }
    return at;
  }

  private int unit(byte[] bytes, int at, int to, boolean optional, Match found) {
    int unit = fields.units.longest(bytes, at, to);
    if (unit >= 0) {
      found.unit = unit;
      return at + fields.units.length(unit);
    }
    if (!optional || fields.supplied == Fields.NO_UNIT) {
      return -1;
    }
    found.mean(fields.missing);
    return at;
  }

  private int mark(byte[] bytes, int at, int to, Match found) {
    int mark = fields.marks.longest(bytes, at, to);
    if (mark < 0) {
      return -1;
    }
    found.mean(fields.markMeanings[mark]);
    return at + fields.marks.length(mark);
  }

  private static int check(Part.Check check, byte[] bytes, int from, int at, int to) {
    if (at + 2 > to || from + check.from() > at) {
      return -1;
    }
    int high = Character.digit(bytes[at], 16);
    int low = Character.digit(bytes[at + 1], 16);
    boolean hex = high >= 0 && low >= 0;
    return hex && 16 * high + low == check.sum().of(bytes, from + check.from(), at) ? at + 2 : -1;
  }
}
