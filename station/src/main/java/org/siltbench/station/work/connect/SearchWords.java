package org.siltbench.station.work.connect;

import java.util.List;
import org.siltbench.balance.find.Attempt;
import org.siltbench.balance.find.PortFacts;
import org.siltbench.balance.format.Visible;

/** The sentences of a search for a balance; the command line and the window show the same. */
public final class SearchWords {

  private SearchWords() {}

  /** A port as the system knows it. */
  public static String port(PortFacts port) {
    return port.path() + "  " + port.name() + (port.usb().isEmpty() ? "" : "  " + port.usb());
  }

  /** The lines of one step: what was heard is the evidence. */
  public static List<String> lines(SearchStep step) {
    if (step instanceof SearchStep.Ports ports) {
      return ports.ports().stream().map(SearchWords::port).toList();
    } else if (step instanceof SearchStep.Heard heard) {
      return List.of(heard(heard.attempt()));
    }
    return List.of(((SearchStep.PassedOver) step).why() + " Passed over.");
  }

  private static String heard(Attempt attempt) {
    String what =
        attempt.isSilent()
            ? "nothing"
            : attempt.readable()
                ? "readable: " + Visible.show(attempt.lines().get(0))
                : attempt.bytes() + " bytes, " + attempt.odd() + " of them odd";
    return attempt.settings().isEmpty() ? what : attempt.settings() + ": " + what;
  }

  /** What the search came to, and what to do next. */
  public static List<String> lines(SearchEnding ending) {
    if (ending instanceof SearchEnding.Found found) {
      return List.of(
          found.needsNoFormat() ? "Its lines read as they are." : "Readable lines come.");
    } else if (ending instanceof SearchEnding.NoPort) {
      return List.of("This machine has no serial port. Plug the adapter in and try again.");
    } else if (ending instanceof SearchEnding.NoneOpened) {
      return List.of("No port could be opened. Nothing was sent.");
    } else if (ending instanceof SearchEnding.Silent) {
      return List.of(
          "Nothing was heard. The balance may speak only on its key or when asked;",
          "press its key now, or add ask=TEXT to the balance text. Nothing was sent.");
    } else if (ending instanceof SearchEnding.Unreadable) {
      return List.of("Bytes came, but no setting made lines of them. See the balance's own menu.");
    }
    return ending instanceof SearchEnding.Cancelled
        ? List.of("Stopped. Nothing was sent.")
        : List.of();
  }
}
