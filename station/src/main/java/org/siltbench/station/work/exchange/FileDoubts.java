package org.siltbench.station.work.exchange;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.siltbench.station.said.Said;

/** What is open about the file as a whole: its character set, what parts its cells. */
final class FileDoubts {

  private static final Pattern STRANGE = Pattern.compile("[\\p{L}\\d]*[^\\x00-\\x7F][\\p{L}\\d]*");

  private FileDoubts() {}

  static void of(Decoded decoded, Grid grid, List<Doubt> doubts) {
    if (!decoded.sure()) {
      String name = decoded.charset().name();
      Matcher strange = STRANGE.matcher(decoded.text());
      String word = strange.find() ? strange.group() : "";
      doubts.add(
          new Doubt(
              0,
              "",
              word,
              Said.of(ExchangeSays.DOUBT_CHARSET, name, word),
              List.of("charset=" + name)));
    }
    for (char rival : grid.rivals()) {
      doubts.add(
          new Doubt(
              0,
              "",
              "",
              Said.of(ExchangeSays.DOUBT_SEPARATOR, said(grid.separator()), said(rival)),
              List.of(
                  "separator=" + Grid.word(grid.separator()), "separator=" + Grid.word(rival))));
    }
  }

  private static Said said(char separator) {
    return Said.of(
        ExchangeSays.valueOf("SEPARATOR_" + Grid.word(separator).toUpperCase(Locale.ROOT)));
  }
}
