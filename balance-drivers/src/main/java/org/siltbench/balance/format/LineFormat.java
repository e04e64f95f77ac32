package org.siltbench.balance.format;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.reason.Unfit;

/**
 * How one balance writes its lines, as data. {@link FormatText} reads and writes the small text
 * file that holds it; {@link LineParser} reads lines by it.
 *
 * @param name the name it is saved under
 * @param ends what ends a line
 * @param line the parts of a line that carries a mass, left to right
 * @param length the exact length of such a line without its end, or 0 for any
 * @param number how the number is written
 * @param units how the unit is written
 * @param marks the texts a mark field may hold
 * @param texts lines that carry no mass, known by a text in them
 * @param talk how the balance is made to speak
 */
public record LineFormat(
    String name,
    Terminator ends,
    List<Part> line,
    int length,
    NumberShape number,
    Units units,
    List<MarkText> marks,
    List<MarkText> texts,
    Talk talk) {

  /** A text and what it means. */
  public record MarkText(String text, Meaning meaning) {}

  /** A unit as the balance writes it. */
  public record UnitText(String text, MassUnit unit) {}

  /**
   * How the number is written.
   *
   * @param point the decimal mark, or {@link #EITHER}
   * @param least fewest decimals
   * @param most most decimals
   */
  public record NumberShape(char point, int least, int most) {

    /** Point or comma; a comma that may part thousands is refused. */
    public static final char EITHER = '?';

    /** Any number of decimals up to nine, point or comma. */
    public static final NumberShape ANY = new NumberShape(EITHER, 0, 9);

    /** Refuses other marks and impossible counts. */
    public NumberShape {
      if (point != '.' && point != ',' && point != EITHER) {
        throw new Unfit(FormatFileSays.MARK_OF_DECIMALS);
      }
      if (least < 0 || most < least || most > 9) {
        throw new Unfit(FormatFileSays.DECIMALS_RANGE);
      }
    }
  }

  /**
   * How the unit is written.
   *
   * @param texts the units a line may carry
   * @param supplied the unit of lines that carry none, or null if a line without unit is not read
   * @param missing what a missing unit means besides: {@code NOTHING} or {@code MOVING}
   * @param firstOnly true if the first unit seen is the only one taken from then on
   */
  public record Units(
      List<UnitText> texts, @Nullable MassUnit supplied, Meaning missing, boolean firstOnly) {

    /** Copies. */
    public Units {
      texts = List.copyOf(texts);
      if (missing != Meaning.NOTHING && missing != Meaning.MOVING) {
        throw new Unfit(FormatFileSays.MISSING_UNIT);
      }
    }
  }

  /** How the balance is made to speak. */
  public record Talk(How how, String ask, String tare) {

    /** It speaks by itself. */
    public static final Talk BY_ITSELF = new Talk(How.BY_ITSELF, "", "");

    /** When lines come. */
    public enum How {
      BY_ITSELF("by itself"),
      ON_KEY("on its key"),
      WHEN_ASKED("when asked");

      private final String words;

      How(String words) {
        this.words = words;
      }

      /** The words in the file. */
      public String words() {
        return words;
      }
    }
  }

  /** Copies, and refuses a format that could read a wrong mass. */
  public LineFormat {
    line = List.copyOf(line);
    marks = List.copyOf(marks);
    texts = List.copyOf(texts);
    FormatRules.check(line, units, marks, texts);
    if (length < 0 || length > LineReader.MAX_LINE) {
      throw new Unfit(FormatFileSays.LENGTH, LineReader.MAX_LINE);
    }
  }

  /** The format of a bare link text: one number, optional sign, a unit, and nothing else. */
  public static LineFormat standard() {
    return StandardFormat.FORMAT;
  }

  /** The same format that supplies a unit where the line has none, and takes no other. */
  public LineFormat expecting(MassUnit unit) {
    List<UnitText> kept = units.texts().stream().filter(u -> u.unit() == unit).toList();
    boolean bare = line.stream().noneMatch(Part.UnitField.class::isInstance);
    Units only = new Units(kept, unit, units.missing(), false);
    List<Part> parts = bare ? line : line.stream().map(LineFormat::optionalUnit).toList();
    return new LineFormat(name, ends, parts, length, number, only, marks, texts, talk);
  }

  /** The same format with another line end. */
  public LineFormat endingWith(Terminator other) {
    return new LineFormat(name, other, line, length, number, units, marks, texts, talk);
  }

  /** The same format under another name. */
  public LineFormat named(String other) {
    return new LineFormat(other, ends, line, length, number, units, marks, texts, talk);
  }

  private static Part optionalUnit(Part part) {
    return part instanceof Part.UnitField ? new Part.UnitField(true) : part;
  }

  /** A reader of lines in this format, for one stream. */
  public LineParser parser() {
    return new LineParser(this);
  }
}
