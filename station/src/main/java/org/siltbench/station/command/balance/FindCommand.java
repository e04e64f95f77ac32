package org.siltbench.station.command.balance;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.find.Attempt;
import org.siltbench.balance.find.PortFacts;
import org.siltbench.balance.format.Visible;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import org.siltbench.station.work.connect.BalanceSearch;
import org.siltbench.station.work.connect.SearchEnding;
import org.siltbench.station.work.connect.SearchStep;
import org.siltbench.station.work.connect.SearchWords;
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

  private List<PortFacts> listed = List.of();

  @Option(
      names = "--save",
      paramLabel = "NAME",
      description = "where readable lines come, learn their format too and save it under this name")
  private @Nullable String save;

  @Override
  public int run(Session session) throws IOException, InterruptedException {
    if (save != null) {
      LearnCommand.requireName(save);
    }
    Balances balances = new Balances(Timebase.system(), session.labFolder().resolve("formats"));
    BalanceSearch search =
        new BalanceSearch(
            PortFacts::all, balances::link, Times.span(span), step -> tell(session, step));
    SearchEnding ending = listOnly ? listed(search) : search.run(only());
    if (ending instanceof SearchEnding.Found found) {
      return found(session, search, found);
    }
    session.document(document(search, null));
    SearchWords.lines(ending).forEach(line -> session.message(line.english()));
    return listOnly ? 0 : 3;
  }

  private static SearchEnding listed(BalanceSearch search) {
    List<PortFacts> unused = search.list();
    return new SearchEnding.Listed();
  }

  private @Nullable LinkSpec only() {
    LinkSpec only = spec == null ? null : Spec.parse(spec);
    if (only instanceof LinkSpec.Typed) {
      throw new Problem.WrongUse(
          "A balance that types like a keyboard has no port and no line settings to find.",
          "Its lines come where the cursor is: siltbench balance learn --balance typed --save NAME"
              + " learns them, siltbench balance watch --balance typed shows them.");
    }
    return only;
  }

  private void tell(Session session, SearchStep step) {
    if (step instanceof SearchStep.Ports ports) {
      listed = ports.ports();
      SearchWords.lines(step).forEach(line -> session.fact(line.english()));
    } else if (step instanceof SearchStep.Heard heard) {
      session.progress(SearchWords.lines(step).get(0).english(), fields(heard.attempt()));
    } else {
      SearchWords.lines(step).forEach(line -> session.message(line.english()));
    }
  }

  private int found(Session session, BalanceSearch search, SearchEnding.Found found)
      throws IOException, InterruptedException {
    LinkSpec spec = found.spec();
    SearchWords.lines(found).forEach(line -> session.message(line.english()));
    if (save != null && !found.needsNoFormat()) {
      session.message("Learning its format: put something on the pan and take it off meanwhile.");
      return LearnCommand.learnAndSave(session, spec, save);
    }
    session.document(document(search, spec));
    session.fact("found: " + spec);
    session.message(
        found.needsNoFormat()
            ? "Weigh with: --balance '" + spec + "'"
            : "Try: siltbench balance learn --balance '" + spec + "' --save NAME");
    return 0;
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

  private Map<String, @Nullable Object> document(BalanceSearch search, @Nullable LinkSpec found) {
    List<Map<String, String>> facts = new ArrayList<>();
    for (PortFacts port : listed) {
      Map<String, String> fields = new LinkedHashMap<>();
      fields.put("path", port.path());
      fields.put("name", port.name());
      fields.put("usb", port.usb());
      facts.add(fields);
    }
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    out.put("ports", facts);
    out.put("tried", search.tried().stream().map(FindCommand::fields).toList());
    out.put("found", found == null ? null : found.toString());
    return out;
  }
}
