package org.siltbench.demo.bench.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.json.Json;
import org.siltbench.station.ledger.Position;
import org.siltbench.station.share.Exchange;
import org.siltbench.station.share.ServerAddress;

/**
 * Many benches and a real PostgreSQL server, in two steps, since a million entries take a while:
 * every bench sends its own ledger; then one new bench fetches them all.
 */
public final class ShareMeasure {

  private ShareMeasure() {}

  /**
   * Runs one step; {@code --server URL --server-user ROLE}, {@code --dir DIR}; {@code --benches N
   * --weighings N} to send, with {@code --first N} in pieces, {@code --fetch} to fetch. The
   * password is in SILTBENCH_DB_PASSWORD.
   */
  public static String run(String[] args) throws IOException {
    ServerAddress server =
        new ServerAddress(
            word(args, "--server"),
            word(args, "--server-user"),
            Optional.ofNullable(System.getenv("SILTBENCH_DB_PASSWORD")).orElse(""));
    Path folder = Bits.folder(args);
    try {
      return Json.write(
          Arrays.asList(args).contains("--fetch")
              ? fetch(server, folder)
              : send(server, folder, args));
    } finally {
      Bits.remove(folder);
    }
  }

  private static String word(String[] args, String name) {
    int at = Arrays.asList(args).indexOf(name);
    if (at < 0 || at + 1 >= args.length) {
      throw new IllegalArgumentException(name + " is missing");
    }
    return args[at + 1];
  }

  private static Map<String, Object> send(ServerAddress server, Path folder, String[] args)
      throws IOException {
    int benches = Bits.number(args, "--benches", 20);
    int weighings = Bits.number(args, "--weighings", 50_000);
    int first = Bits.number(args, "--first", 0);
    double[] seconds = new double[benches];
    double[] rates = new double[benches];
    long sent = 0;
    for (int bench = 0; bench < benches; bench++) {
      Path lab = folder.resolve("lab" + bench);
      OpenMeasure.fill(lab, weighings, 100 + first + bench, "N" + (first + bench) + "-");
      try (OpenLab open = LabFolder.open(lab, Bits.setting(1))) {
        long start = System.nanoTime();
        long here = sendOwn(server, open);
        seconds[bench] = (System.nanoTime() - start) / 1e9;
        rates[bench] = here / seconds[bench];
        sent += here;
      }
      Bits.remove(lab);
    }
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("measure", "share, sending");
    result.put("benches", (long) benches);
    result.put("weighings_each", (long) weighings);
    result.put("lines_sent", sent);
    result.put("seconds_each", Bits.spread(seconds));
    result.put("lines_per_s", Bits.spread(rates));
    return result;
  }

  /** What a bench sends at its first exchange; the cable is pulled before it fetches anything. */
  private static long sendOwn(ServerAddress server, OpenLab open) {
    long own = open.ledgers().values().stream().mapToLong(Position::seq).sum();
    try {
      return Exchange.with(
              server,
              open,
              done -> {
                if (done == own) {
                  throw new CablePulled();
                }
              })
          .sent();
    } catch (CablePulled e) {
      return own;
    }
  }

  private static final class CablePulled extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  private static Map<String, Object> fetch(ServerAddress server, Path folder) throws IOException {
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("measure", "share, fetching");
    try (OpenLab open =
        LabFolder.create(folder.resolve("lab"), "newest", false, Bits.setting(99))) {
      long start = System.nanoTime();
      Exchange.Exchanged all = Exchange.with(server, open, done -> {});
      double seconds = (System.nanoTime() - start) / 1e9;
      result.put("benches", (long) open.ledgers().size());
      result.put("lines_received", all.received());
      result.put("refused", (long) all.refused().size());
      result.put("seconds", Bits.rounded(seconds));
      result.put("lines_per_s", Math.round(all.received() / seconds));
      start = System.nanoTime();
      Exchange.Exchanged again = Exchange.with(server, open, done -> {});
      result.put("nothing_new_ms", Bits.rounded((System.nanoTime() - start) / 1e6));
      result.put("nothing_new_lines", again.sent() + again.received());
    }
    return result;
  }
}
