package org.siltbench.station.command.weigh;

import java.util.function.Consumer;
import org.siltbench.balance.stable.PanSettings;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Times;
import org.siltbench.station.work.weigh.Patience;
import org.siltbench.station.work.weigh.Scale;
import org.siltbench.station.work.weigh.WeighEvent;
import picocli.CommandLine.Option;

/** The options of every command that weighs. */
public final class BalanceOptions {

  @Option(
      names = "--balance",
      paramLabel = "SPEC",
      required = true,
      description =
          "serial:PATH, tcp:HOST:PORT, replay:FILE, typed or practice, with ?key=value&... behind it")
  private String spec = "";

  @Option(
      names = "--give-up",
      paramLabel = "SPAN",
      description = "end after a silent or lost link of this length; default: ${DEFAULT-VALUE}")
  private String giveUp = "5m";

  /** The link text. */
  public String spec() {
    return spec;
  }

  /** Opens the balance; what happens on it is told to the listener. */
  public Scale open(
      Session session, Bench bench, PanSettings settings, Consumer<WeighEvent> listener) {
    Patience patience = Patience.USUAL.endingAfter(Times.span(giveUp));
    return Scale.open(bench, spec, session.balances(), settings, patience, listener);
  }
}
