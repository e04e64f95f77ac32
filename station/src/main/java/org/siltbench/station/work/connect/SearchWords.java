package org.siltbench.station.work.connect;

import java.util.List;
import org.siltbench.balance.find.Attempt;
import org.siltbench.balance.find.PortFacts;
import org.siltbench.balance.format.Visible;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/**
 * The sentences of a search for a balance; the command line and the window show the same, each in
 * its language.
 */
public final class SearchWords {

  private SearchWords() {}

  /** A port as the system knows it. */
  public static String port(PortFacts port) {
    return port.path() + "  " + port.name() + (port.usb().isEmpty() ? "" : "  " + port.usb());
  }

  /** The lines of one step: what was heard is the evidence. */
  public static List<Words> lines(SearchStep step) {
    if (step instanceof SearchStep.Ports ports) {
      return ports.ports().stream().map(SearchWords::port).map(Words::verbatim).toList();
    } else if (step instanceof SearchStep.Heard heard) {
      return List.of(heard(heard.attempt()));
    }
    return List.of(
        Said.of(ConnectSays.PASSED_OVER, Elsewhere.words(((SearchStep.PassedOver) step).why())));
  }

  private static Words heard(Attempt attempt) {
    Words what =
        attempt.isSilent()
            ? Said.of(ConnectSays.NOTHING)
            : attempt.readable()
                ? Said.of(ConnectSays.READABLE, Visible.show(attempt.lines().get(0)))
                : Said.of(ConnectSays.ODD_BYTES, attempt.bytes(), attempt.odd());
    return attempt.settings().isEmpty()
        ? what
        : Said.of(ConnectSays.WITH, attempt.settings(), what);
  }

  /** What the search came to, and what to do next. */
  public static List<Words> lines(SearchEnding ending) {
    if (ending instanceof SearchEnding.Found found) {
      return List.of(
          Said.of(found.needsNoFormat() ? ConnectSays.READS_AS_IT_IS : ConnectSays.READABLE_LINES));
    } else if (ending instanceof SearchEnding.NoPort) {
      return List.of(Said.of(ConnectSays.NO_PORT));
    } else if (ending instanceof SearchEnding.NoneOpened) {
      return List.of(Said.of(ConnectSays.NONE_OPENED));
    } else if (ending instanceof SearchEnding.Silent) {
      return List.of(Said.of(ConnectSays.NOTHING_HEARD), Said.of(ConnectSays.PRESS_ITS_KEY));
    } else if (ending instanceof SearchEnding.Unreadable) {
      return List.of(Said.of(ConnectSays.NO_LINES));
    }
    return ending instanceof SearchEnding.Cancelled
        ? List.of(Said.of(ConnectSays.STOPPED))
        : List.of();
  }
}
