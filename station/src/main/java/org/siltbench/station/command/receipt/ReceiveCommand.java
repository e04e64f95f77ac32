package org.siltbench.station.command.receipt;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.exchange.Answers;
import org.siltbench.station.work.exchange.FieldImport;
import org.siltbench.station.work.exchange.Preview;
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

  @Option(
      names = "--import",
      description =
          "read notes in any shape: shows how each column is understood and every doubt, asks before"
              + " it takes them in")
  private boolean imports;

  @Option(
      names = "--as",
      paramLabel = "KEY=VALUE",
      description =
          "with --import: settles a doubt, as dates=day-first, decimals=comma,"
              + " \"unit:Menge=mL\", \"Menge=volume_ml\", skip=14; may be given several times")
  private List<String> answers = List.of();

  @Option(
      names = "--yes",
      description = "with --import: take it in without asking, if no doubt is left")
  private boolean yes;

  @Option(names = "--look", description = "reconcile only; record nothing")
  private boolean look;

  @Override
  public int run(Session session) throws IOException {
    Bench bench = session.existingBench();
    FieldImport importing = new FieldImport(session.labFolder());
    Preview preview = imports ? importing.look(from, Answers.parse(answers)) : null;
    if (preview != null && !new ImportText(session, preview).agreed(look, yes)) {
      return 1;
    }
    ReceiptReader reader = new ReceiptReader(session.clock());
    ReceiptTable table = preview == null ? reader.read(from) : reader.read(from, preview.table());
    Receipt receipt = new Receipt(bench);
    Receipt.Options options = new Receipt.Options(scanned(session), goOn, missing);
    Reconciliation.Done done =
        look
            ? new Reconciliation.Done(receipt.look(table, options), java.util.List.of())
            : receipt.take(table, options);
    if (preview != null && !done.written().isEmpty()) {
      importing.remember(preview, session.clock());
    }
    return new ReceiptText(session, look, preview).tell(done);
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
