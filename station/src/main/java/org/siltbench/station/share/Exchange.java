package org.siltbench.station.share;

import java.io.IOException;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Anchor;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.ledger.LineText;
import org.siltbench.station.ledger.Position;

/**
 * Exchanges lines with the server, ledger by ledger, in batches. May be cut anywhere and repeated
 * any number of times: each side only ever takes the continuation of what it has.
 */
public final class Exchange {

  private static final int AT_ONCE = 500;
  private static final int BYTES_AT_ONCE = 8 << 20;

  /**
   * What was exchanged.
   *
   * @param sent lines that the server did not have
   * @param received lines that this bench did not have
   * @param refused what could not be taken, in sentences
   */
  public record Exchanged(long sent, long received, List<String> refused) {}

  private final OpenLab lab;
  private final Server server;
  private final LongConsumer progress;
  private final List<String> refused = new ArrayList<>();
  private long sent;
  private long received;

  private Exchange(OpenLab lab, Server server, LongConsumer progress) {
    this.lab = lab;
    this.server = server;
    this.progress = progress;
  }

  /** Exchanges everything with the server; the progress is the lines done so far. */
  public static Exchanged with(ServerAddress address, OpenLab lab, LongConsumer progress) {
    try (Server server = new Server(address)) {
      Exchange exchange = new Exchange(lab, server, progress);
      exchange.run(address);
      return new Exchanged(exchange.sent, exchange.received, List.copyOf(exchange.refused));
    } catch (SQLException e) {
      throw new Problem.Outside(
          "The exchange with " + address.plain() + " broke off: " + e.getMessage(),
          "Nothing is lost; what was exchanged until then stays.",
          "Share again: it goes on where it stopped.",
          e);
    }
  }

  /** The newest hashes on the server, as anchors for verify. */
  public static List<Anchor> anchors(ServerAddress address) {
    try (Server server = new Server(address)) {
      List<Anchor> anchors = new ArrayList<>();
      server
          .heads()
          .forEach(
              (bench, head) ->
                  anchors.add(
                      new Anchor("server", address.plain(), bench, head.seq(), head.sum(), "")));
      return anchors;
    } catch (SQLException e) {
      throw new Problem.Outside(
          "The server could not be asked: " + e.getMessage(), "", "Try again later.", e);
    }
  }

  private void run(ServerAddress address) throws SQLException {
    Map<String, Server.Head> heads = server.heads();
    heads.values().removeIf(head -> head.seq() < 0);
    for (Map.Entry<String, Position> ledger : lab.ledgers().entrySet()) {
      send(ledger.getKey(), ledger.getValue(), heads.get(ledger.getKey()));
    }
    for (Map.Entry<String, Server.Head> head : heads.entrySet()) {
      if (!head.getKey().equals(lab.code())) {
        fetch(head.getKey(), head.getValue().seq());
      }
    }
    Position own = lab.ledgers().get(lab.code());
    if (own != null && sent + received > 0) {
      lab.anchor("server", address.plain(), lab.code(), own.seq(), own.sum());
    }
  }

  private void send(String bench, Position here, Server.@Nullable Head there) throws SQLException {
    long from = there == null ? 0 : there.seq();
    if (bench.equals(lab.code()) && from > here.seq()) {
      throw new Problem.Refused(
          "The server has %d entries of this bench, but only %d are here."
              .formatted(from, here.seq()),
          "Nothing was exchanged.",
          "Lines were lost here, or this is an old copy: restore makes a new bench that goes on"
              + " from what the server has.");
    }
    if (there != null && from == here.seq() && !there.sum().equals(here.sum())) {
      conflict(bench);
      return;
    }
    while (from < here.seq()) {
      List<String> lines = bounded(lab.lines(bench, from, AT_ONCE));
      if (lines.isEmpty()) {
        refused.add("Bench " + bench + ": its lines after " + from + " cannot be read here.");
        return;
      }
      try {
        server.add(lines);
      } catch (Problem.Refused e) {
        conflict(bench);
        return;
      }
      from += lines.size();
      sent += lines.size();
      progress.accept(sent + received);
    }
  }

  private void conflict(String bench) {
    Problem.Refused problem = secondHistory(null);
    if (bench.equals(lab.code())) {
      throw problem;
    }
    refused.add("Bench " + bench + ": " + problem.what());
  }

  private static List<String> bounded(List<String> lines) {
    long bytes = 0;
    int count = 0;
    while (count < lines.size() && (count == 0 || bytes < BYTES_AT_ONCE)) {
      bytes += lines.get(count).length();
      count++;
    }
    return lines.subList(0, count);
  }

  private void fetch(String bench, long until) throws SQLException {
    Position here = lab.ledgers().get(bench);
    long from = here == null ? 0 : here.seq();
    while (from < until) {
      List<String> lines = server.lines(bench, from, AT_ONCE);
      if (lines.isEmpty()) {
        return;
      }
      int taken;
      try {
        taken = lab.receive(bench, lines);
      } catch (Problem.Refused e) {
        refused.add("Bench " + shown(bench) + ": " + e.what());
        return;
      }
      if (taken == 0) {
        refused.add("Bench " + shown(bench) + ": the server sends what is here already.");
        return;
      }
      received += taken;
      from += lines.size();
      progress.accept(sent + received);
    }
  }

  private static String shown(String bench) {
    return bench.length() > 10 ? bench.substring(0, 10) + "…" : bench;
  }

  static LineText.Link link(byte[] line) {
    try {
      return LineText.link(line);
    } catch (IOException e) {
      throw new Problem.Outside(
          "A line of the ledger here is damaged: " + e.getMessage(),
          "It was not sent.",
          "Run verify.",
          e);
    }
  }

  static Problem.Refused secondHistory(@Nullable SQLException e) {
    return new Problem.Refused(
        "The server has another history of this bench: two copies of one lab folder were used."
            + (e == null ? "" : " (" + e.getMessage() + ")"),
        "Nothing was overwritten on either side.",
        "Keep both folders. Restore makes a new bench; enter there what only this copy has.");
  }
}
