package org.siltbench.balance.format;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.siltbench.calc.reason.Unfit;

/** The parts of a line as words: {@code blanks sign blanks number gap unit}. */
final class PartText {

  private static final String PARTS =
      "'text', blanks, gap, sign, number, unit, unit?, mark, digits, word, any:COUNT,"
          + " check:xor, check:add, check:negated";

  private PartText() {}

  static List<Part> parse(String value) {
    List<Part> out = new ArrayList<>();
    int at = 0;
    while (at < value.length()) {
      if (value.charAt(at) == ' ') {
        at++;
        continue;
      }
      int end = end(value, at);
      out.add(part(value.substring(at, end)));
      at = end;
    }
    return out;
  }

  private static int end(String value, int at) {
    if (value.charAt(at) == '\'') {
      return Quoted.end(value, at);
    }
    int blank = value.indexOf(' ', at);
    return blank < 0 ? value.length() : blank;
  }

  private static Part part(String word) {
    if (word.startsWith("'")) {
      return new Part.Text(Quoted.unquote(word));
    }
    return switch (word) {
      case "blanks" -> new Part.Blanks();
      case "gap" -> new Part.Gap();
      case "sign" -> new Part.Sign();
      case "number" -> new Part.Numeral();
      case "unit" -> new Part.UnitField(false);
      case "unit?" -> new Part.UnitField(true);
      case "mark" -> new Part.MarkField();
      case "digits" -> new Part.Digits();
      case "word" -> new Part.Word();
      default -> counted(word);
    };
  }

  private static Part counted(String word) {
    if (word.matches("any:[0-9]{1,3}")) {
      return new Part.Any(Integer.parseInt(word.substring(4)));
    }
    if (word.matches("check:[a-z]+(\\+[0-9]{1,3})?")) {
      String[] pieces = word.substring(6).split("\\+", -1);
      int from = pieces.length == 1 ? 0 : Integer.parseInt(pieces[1]);
      return new Part.Check(sum(pieces[0]), from);
    }
    throw new Unfit(FormatFileSays.UNKNOWN_PART, word, PARTS);
  }

  private static Part.Sum sum(String word) {
    return Arrays.stream(Part.Sum.values())
        .filter(s -> s.word().equals(word))
        .findFirst()
        .orElseThrow(() -> new Unfit(FormatFileSays.CHECK, word));
  }

  static String print(List<Part> parts) {
    return parts.stream().map(PartText::print).collect(Collectors.joining(" "));
  }

  private static String print(Part part) {
    if (part instanceof Part.Text t) {
      return Quoted.quote(t.text());
    } else if (part instanceof Part.UnitField u) {
      return u.optional() ? "unit?" : "unit";
    } else if (part instanceof Part.Any any) {
      return "any:" + any.count();
    } else if (part instanceof Part.Check c) {
      return "check:" + c.sum().word() + (c.from() == 0 ? "" : "+" + c.from());
    }
    return plain(part);
  }

  private static String plain(Part part) {
    if (part instanceof Part.Blanks) {
      return "blanks";
    } else if (part instanceof Part.Gap) {
      return "gap";
    } else if (part instanceof Part.Sign) {
      return "sign";
    } else if (part instanceof Part.Numeral) {
      return "number";
    } else if (part instanceof Part.MarkField) {
      return "mark";
    }
    return part instanceof Part.Digits ? "digits" : "word";
  }
}
