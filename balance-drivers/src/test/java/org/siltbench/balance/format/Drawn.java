package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.siltbench.balance.format.LineFormat.MarkText;
import org.siltbench.balance.format.LineFormat.NumberShape;
import org.siltbench.balance.format.LineFormat.Talk;
import org.siltbench.balance.format.LineFormat.UnitText;
import org.siltbench.balance.format.LineFormat.Units;

/** Formats, lines that fit them or nearly, and damage, all drawn from one seed. */
final class Drawn {

  private static final String SPICE = "0123456789.,+- \t\tgmkgSD*okERR\u00b5\u00ff\r;x";
  private static final List<String> MARKS =
      List.of("S", "D", "", "ok", "..", "ST", "stable at rest", "US", "?", "0");

  private final SplittableRandom random;

  Drawn(SplittableRandom random) {
    this.random = random;
  }

  /** A format drawn from the grammar; null where the rules of formats refuse it. */
  LineFormat format() {
    List<Part> parts = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      parts.add(any());
    }
    if (random.nextInt(4) > 0) {
      pad(parts);
      parts.add(new Part.Sign());
    }
    pad(parts);
    parts.add(new Part.Numeral());
    pad(parts);
    if (random.nextInt(5) > 0) {
      parts.add(new Part.UnitField(random.nextInt(4) == 0));
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      parts.add(any());
    }
    try {
      return new LineFormat(
          "drawn",
          Terminator.CR_LF,
          parts,
          random.nextInt(6) == 0 ? 12 + random.nextInt(10) : 0,
          shape(),
          units(),
          marks(parts),
          random.nextBoolean() ? List.of() : List.of(new MarkText("ERR", Meaning.FAULT)),
          Talk.BY_ITSELF);
    } catch (IllegalArgumentException refused) {
      return null;
    }
  }

  private void pad(List<Part> parts) {
    switch (random.nextInt(3)) {
      case 0 -> parts.add(new Part.Blanks());
      case 1 -> parts.add(new Part.Gap());
      default -> {
        // none
      }
    }
  }

  private Part any() {
    return switch (random.nextInt(9)) {
      case 0, 1 -> new Part.MarkField();
      case 2 -> new Part.Text(random.nextBoolean() ? "N" : "weight is now ");
      case 3 -> new Part.Digits();
      case 4 -> new Part.Word();
      case 5 -> new Part.Any(1 + random.nextInt(3));
      case 6 -> new Part.Check(Part.Sum.values()[random.nextInt(3)], random.nextInt(2));
      case 7 -> new Part.Blanks();
      default -> new Part.Gap();
    };
  }

  private NumberShape shape() {
    int least = random.nextInt(10);
    int most = random.nextBoolean() ? least : least + random.nextInt(10 - least);
    return new NumberShape(".,?".charAt(random.nextInt(3)), least, most);
  }

  private Units units() {
    List<UnitText> texts = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      MassUnit unit = MassUnit.values()[random.nextInt(MassUnit.values().length)];
      texts.add(new UnitText(random.nextInt(8) == 0 ? "[a long unit]" : unit.symbol(), unit));
    }
    MassUnit supplied = random.nextInt(3) == 0 ? MassUnit.MILLIGRAM : null;
    Meaning missing = random.nextInt(4) == 0 ? Meaning.MOVING : Meaning.NOTHING;
    return new Units(texts, supplied, missing, random.nextInt(4) == 0);
  }

  private List<MarkText> marks(List<Part> parts) {
    List<MarkText> out = new ArrayList<>();
    int count =
        parts.stream().anyMatch(Part.MarkField.class::isInstance) ? 1 + random.nextInt(5) : 0;
    for (int i = 0; i < count; i++) {
      Meaning meaning = Meaning.values()[random.nextInt(Meaning.values().length)];
      MarkText drawn = new MarkText(MARKS.get(random.nextInt(MARKS.size())), meaning);
      if (out.stream().noneMatch(m -> m.text().equals(drawn.text()))) {
        out.add(drawn);
      }
    }
    return out;
  }

  /** A line that fits the format, or nearly. */
  String line(LineFormat format) {
    StringBuilder out = new StringBuilder();
    for (Part part : format.line()) {
      out.append(text(part, format, out));
    }
    return out.toString();
  }

  private String text(Part part, LineFormat format, CharSequence before) {
    if (part instanceof Part.Text t) {
      return t.text();
    } else if (part instanceof Part.Sign) {
      return List.of("+", "-", "").get(random.nextInt(3));
    } else if (part instanceof Part.Numeral) {
      return number(format.number());
    } else if (part instanceof Part.UnitField) {
      List<UnitText> texts = format.units().texts();
      return texts.isEmpty() ? "" : texts.get(random.nextInt(texts.size())).text();
    } else if (part instanceof Part.MarkField) {
      return format.marks().get(random.nextInt(format.marks().size())).text();
    } else if (part instanceof Part.Check check) {
      return check(check, before.toString());
    }
    return plain(part);
  }

  private static String check(Part.Check check, String before) {
    byte[] bytes = before.getBytes(ISO_8859_1);
    int from = Math.min(check.from(), bytes.length);
    return String.format("%02X", check.sum().of(bytes, from, bytes.length));
  }

  private String plain(Part part) {
    if (part instanceof Part.Blanks || part instanceof Part.Gap) {
      int least = part instanceof Part.Gap ? 1 : 0;
      String blanks = " ".repeat(least + random.nextInt(12));
      return random.nextInt(6) == 0 ? blanks + "\t " : blanks;
    } else if (part instanceof Part.Digits) {
      return Integer.toString(random.nextInt(100_000));
    } else if (part instanceof Part.Word) {
      return "w" + random.nextInt(100);
    }
    return "x".repeat(((Part.Any) part).count());
  }

  private String number(NumberShape shape) {
    int decimals = shape.least() + random.nextInt(shape.most() - shape.least() + 1);
    String whole = digits(1 + random.nextInt(random.nextInt(5) == 0 ? 14 : 5));
    char point =
        shape.point() == NumberShape.EITHER ? ".,".charAt(random.nextInt(2)) : shape.point();
    return decimals == 0 ? whole : whole + point + digits(decimals);
  }

  private String digits(int count) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < count; i++) {
      out.append((char) ('0' + (random.nextInt(4) == 0 ? 0 : random.nextInt(10))));
    }
    return out.toString();
  }

  String noise(int length) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < length; i++) {
      out.append(spice());
    }
    return out.toString();
  }

  private char spice() {
    return random.nextInt(5) == 0
        ? (char) random.nextInt(256)
        : SPICE.charAt(random.nextInt(SPICE.length()));
  }

  String damaged(String line) {
    StringBuilder out = new StringBuilder(line);
    for (int i = 1 + random.nextInt(2); i > 0 && !out.isEmpty(); i--) {
      int at = random.nextInt(out.length());
      switch (random.nextInt(4)) {
        case 0 -> out.setCharAt(at, spice());
        case 1 -> out.deleteCharAt(at);
        case 2 -> out.insert(at, out.charAt(at));
        default -> out.insert(at, spice());
      }
    }
    return out.toString();
  }

  /** As long as before, with some characters exchanged; mostly for their like. */
  String changed(String line) {
    StringBuilder out = new StringBuilder(line);
    for (int i = 1 + random.nextInt(4); i > 0 && !out.isEmpty(); i--) {
      int at = random.nextInt(out.length());
      out.setCharAt(at, like(out.charAt(at)));
    }
    return out.toString();
  }

  private char like(char c) {
    boolean digit = c >= '0' && c <= '9';
    if (random.nextInt(12) == 0) {
      return spice();
    }
    return digit
        ? "0123456789 +-".charAt(random.nextInt(13))
        : c == ' ' ? " 0147 +-".charAt(random.nextInt(8)) : c == '+' || c == '-' ? sign() : c;
  }

  private char sign() {
    return "+- 5".charAt(random.nextInt(4));
  }
}
