package org.siltbench.station.command.ledger;

import java.util.LinkedHashMap;
import java.util.Map;
import org.siltbench.station.command.LongWork;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.share.Exchange;
import org.siltbench.station.share.Schema;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code share}. */
final class ShareCommand implements Task {

  @Mixin ServerOptions server = new ServerOptions();

  @Option(
      names = "--prepare",
      description = "for the administrator: make the server's tables or bring them forward")
  private boolean prepare;

  @Option(
      names = "--role",
      paramLabel = "ROLE",
      description = "with --prepare: the role of the benches; default: siltbench")
  private String role = "siltbench";

  @Override
  public int run(Session session) {
    if (prepare) {
      Schema.prepare(server.needed(session), role);
      session.fact("The server is ready; " + role + " may insert and select, nothing else.");
      session.document(Map.of("prepared", true, "role", role));
      return 0;
    }
    LongWork work = new LongWork(session);
    Exchange.Exchanged done =
        Exchange.with(
            server.needed(session),
            Opened.lab(session),
            lines -> {
              session.progress("", Map.of("event", "sharing", "lines", lines));
              work.at("lines exchanged", lines);
            });
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("sent", done.sent());
    document.put("received", done.received());
    document.put("refused", done.refused());
    session.document(document);
    session.fact("sent %d, received %d".formatted(done.sent(), done.received()));
    done.refused().forEach(session::message);
    return done.refused().isEmpty() ? 0 : 1;
  }
}
