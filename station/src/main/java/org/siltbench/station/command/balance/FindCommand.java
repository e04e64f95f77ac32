package org.siltbench.station.command.balance;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.find.Attempt;
import org.siltbench.balance.find.Finder;
import org.siltbench.balance.find.PortFacts;
import org.siltbench.balance.format.Visible;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import picocli.CommandLine.Option;

/** {@code balance find}. */
final class FindCommand implements Task {

  @Option(
      names = "--balance",
      paramLabel = "SPEC",
      description = "the port to try, as serial:/dev/ttyUSB0; default: every port there is")
  private @Nullable String spec;

  @Option(names = "--list", description = "only list the ports, open none")
  private boolean listOnly;

  @Option(
      names = "--for",
      paramLabel = "SPAN",
      description = "longest to listen with one setting; default: ${DEFAULT-VALUE}")
  private String span = "2s";

  @Override
  public int run(Session session) throws IOException, InterruptedException {
    List<PortFacts> ports = PortFacts.all();
    for (PortFacts port : ports) {
      session.fact(
          port.path() + "  " + port.name() + (port.usb().isEmpty() ? "" : "  " + port.usb()));
    }
    List<Attempt> tried = new ArrayList<>();
    LinkSpec found = listOnly ? null : search(session, specs(ports), tried);
    session.document(document(ports, tried, found));
    if (found != null) {
      session.fact("found: " + found);
      session.message(
          "Readable lines come. Try: siltbench balance learn --balance '" + found + "'");
      return 0;
    }
    return listOnly ? 0 : none(session, ports, tried);
  }

  private List<LinkSpec> specs(List<PortFacts> ports) {
    if (spec != null) {
      return List.of(Spec.parse(spec));
    }
    return ports.stream().map(p -> Spec.parse("serial:" + p.path())).toList();
  }

  private @Nullable LinkSpec search(Session session, List<LinkSpec> specs, List<Attempt> tried)
      throws IOException, InterruptedException {
    Balances balances = new Balances(Timebase.system(), session.labFolder().resolve("formats"));
    Duration each = Times.span(span);
    Finder finder =
        new Finder(
            balances::link,
            each,
            attempt -> {
              tried.add(attempt);
              session.progress(line(attempt), fields(attempt));
            });
    for (LinkSpec one : specs) {
      LinkSpec found = search(session, finder, one);
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /** One port that cannot be opened does not end the search of the others. */
  private @Nullable LinkSpec search(Session session, Finder finder, LinkSpec one)
      throws IOException, InterruptedException {
    try {
      List<Attempt> all = finder.search(one);
      Attempt last = all.get(all.size() - 1);
      return last.readable() ? last.spec() : null;
    } catch (BalanceException e) {
      if (spec != null) {
        throw e;
      }
      session.message(e.getMessage() + ". Passed over.");
      return null;
    }
  }

  private static String line(Attempt attempt) {
    String heard =
        attempt.isSilent()
            ? "nothing"
            : attempt.readable()
                ? "readable: " + Visible.show(attempt.lines().get(0))
                : attempt.bytes() + " bytes, " + attempt.odd() + " of them odd";
    return attempt.settings() + ": " + heard;
  }

  private static Map<String, @Nullable Object> fields(Attempt attempt) {
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    out.put("event", "tried");
    out.put("balance", attempt.spec().toString());
    out.put("line", attempt.settings());
    out.put("bytes", attempt.bytes());
    out.put("odd", attempt.odd());
    out.put("readable", attempt.readable());
    out.put("lines", attempt.lines().stream().limit(4).map(Visible::show).toList());
    return out;
  }

  private static Map<String, @Nullable Object> document(
      List<PortFacts> ports, List<Attempt> tried, @Nullable LinkSpec found) {
    List<Map<String, String>> facts = new ArrayList<>();
    for (PortFacts port : ports) {
      Map<String, String> fields = new LinkedHashMap<>();
      fields.put("path", port.path());
      fields.put("name", port.name());
      fields.put("usb", port.usb());
      facts.add(fields);
    }
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    out.put("ports", facts);
    out.put("tried", tried.stream().map(FindCommand::fields).toList());
    out.put("found", found == null ? null : found.toString());
    return out;
  }

  private static int none(Session session, List<PortFacts> ports, List<Attempt> tried) {
    if (tried.isEmpty() && ports.isEmpty()) {
      session.message("This machine has no serial port. Plug the adapter in and try again.");
    } else if (tried.stream().allMatch(Attempt::isSilent)) {
      session.message("Nothing was heard. The balance may speak only on its key or when asked;");
      session.message("press its key now, or add ask=TEXT to the balance text. Nothing was sent.");
    } else {
      session.message("Bytes came, but no setting made lines of them. See the balance's own menu.");
    }
    return 3;
  }
}
