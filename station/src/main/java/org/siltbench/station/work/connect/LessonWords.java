package org.siltbench.station.work.connect;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.balance.format.FormatText;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.format.Visible;
import org.siltbench.balance.learn.Learned;
import org.siltbench.balance.learn.Situation;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/**
 * The sentences of a lesson; the command line and the window show the same, each in its language.
 */
public final class LessonWords {

  private static final int MOST_LINES = 12;

  private LessonWords() {}

  /** What to show the balance. */
  public static String show(Situation situation) {
    return "Show " + situation.words() + '.';
  }

  /** The evidence: the lines and what is read from them, what was found, what stays unknown. */
  public static List<Words> evidence(Learned learned) {
    List<Words> out = new ArrayList<>();
    learned.lines().stream().limit(MOST_LINES).forEach(l -> out.add(line(l)));
    learned.found().forEach(found -> out.add(Elsewhere.words(found)));
    learned.open().forEach(open -> out.add(Said.of(ConnectSays.UNKNOWN, Elsewhere.words(open))));
    return out;
  }

  /** The format's file, line by line; empty if none is safe. */
  public static List<String> format(Learned learned) {
    LineFormat format = learned.format();
    return format == null ? List.of() : FormatText.print(format).lines().toList();
  }

  private static Words line(Learned.Line line) {
    String grams = grams(line.reading());
    String text = Visible.show(line.text());
    return grams == null
        ? Said.of(ConnectSays.NOT_READ, text, Elsewhere.words(line.reason()))
        : Words.verbatim(text + "   ->   " + grams + " g");
  }

  /** The mass in grams with the digits the balance showed, or null if the line has none. */
  public static @Nullable String grams(@Nullable Reading reading) {
    Mass mass = reading == null ? null : reading.mass();
    if (reading == null || mass == null) {
      return null;
    }
    int shown = new BigDecimal(reading.digits()).scale();
    BigDecimal exact = BigDecimal.valueOf(mass.nanograms(), 9);
    int least = exact.stripTrailingZeros().scale();
    int places = Math.max(least, shown + shift(reading.unit()));
    return exact.setScale(Math.max(0, places)).toPlainString();
  }

  private static int shift(String unit) {
    return switch (unit) {
      case "mg" -> 3;
      case "µg" -> 6;
      case "kg" -> -3;
      default -> 0;
    };
  }
}
