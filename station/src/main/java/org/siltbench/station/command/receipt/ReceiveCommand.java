package org.siltbench.station.command.receipt;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.receipt.Receipt;
import org.siltbench.station.work.receipt.ReceiptReader;
import org.siltbench.station.work.receipt.ReceiptTable;
import org.siltbench.station.work.receipt.Reconciliation;
import org.siltbench.station.work.scan.BagScan;
import picocli.CommandLine.Option;

/** {@code receive}. */
final class ReceiveCommand implements Task {

  @Option(
      names = "--from",
      required = true,
      paramLabel = "F.csv",
      description = "the receipt table: one line a bag")
  private Path from = Path.of("");

  @Option(
      names = "--scans",
      paramLabel = "FILE",
      description = "the bags in the box, scanned, one a line; - reads standard input")
  private @Nullable Path scans;

  @Option(names = "--go-on", description = "take in the good lines although others are refused")
  private boolean goOn;

  @Option(names = "--missing", description = "record bags that have not come back as missing")
  private boolean missing;

  @Option(names = "--look", description = "reconcile only; record nothing")
  private boolean look;

  @Override
  public int run(Session session) throws IOException {
    Bench bench = session.existingBench();
    ReceiptTable table = new ReceiptReader(session.clock()).read(from);
    Receipt receipt = new Receipt(bench);
    Receipt.Options options = new Receipt.Options(scanned(session), goOn, missing);
    Reconciliation.Done done =
        look
            ? new Reconciliation.Done(receipt.look(table, options), java.util.List.of())
            : receipt.take(table, options);
    return new ReceiptText(session, look).tell(done);
  }

  private Optional<Set<String>> scanned(Session session) throws IOException {
    if (scans == null) {
      return Optional.empty();
    }
    Set<String> ids = new TreeSet<>();
    if (scans.toString().equals("-")) {
      for (String line = session.console().readLine();
          line != null;
          line = session.console().readLine()) {
        add(ids, line);
      }
    } else {
      Files.readAllLines(scans, StandardCharsets.UTF_8).forEach(line -> add(ids, line));
    }
    return Optional.of(ids);
  }

  private static void add(Set<String> ids, String line) {
    if (!line.isBlank()) {
      ids.add(BagScan.of(line).filter().text());
    }
  }
}
