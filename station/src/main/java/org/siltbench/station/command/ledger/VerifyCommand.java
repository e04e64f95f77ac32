package org.siltbench.station.command.ledger;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Anchor;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.command.LongWork;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.ledger.LineText;
import org.siltbench.station.ledger.VerifyLedger.Checked;
import org.siltbench.station.ledger.VerifyLedger.Finding;
import org.siltbench.station.share.Exchange;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code verify}. */
final class VerifyCommand implements Task {

  @Option(
      names = "--paper",
      paramLabel = "HASH",
      description = "a hash printed on a paper; 8 digits or more; may be given several times")
  private List<String> papers = new ArrayList<>();

  @Option(names = "--backup", paramLabel = "DIR", description = "compare with a backup")
  @Nullable Path backup;

  @Mixin ServerOptions server = new ServerOptions();

  @Override
  public int run(Session session) {
    Path lab = session.labFolder();
    if (!LabFolder.exists(lab)) {
      throw new Problem.WrongUse("There is no lab in " + lab + '.', "Name one with --lab DIR.");
    }
    VerifyLab.Report report = VerifyLab.of(lab, anchors(session), new LongWork(session)::at);
    session.document(document(report));
    tell(session, report);
    return report.ok() ? 0 : 1;
  }

  private List<Anchor> anchors(Session session) {
    List<Anchor> anchors = new ArrayList<>();
    papers.forEach(hash -> anchors.add(VerifyLab.paper("", hash)));
    if (backup != null) {
      anchors.addAll(VerifyLab.backup(backup, new LongWork(session)::at));
    }
    server.address(session).ifPresent(address -> anchors.addAll(Exchange.anchors(address)));
    return anchors;
  }

  private static Map<String, @Nullable Object> document(VerifyLab.Report report) {
    Checked own = report.own();
    Map<String, @Nullable Object> json = new LinkedHashMap<>();
    json.put("ok", report.ok());
    json.put("bench", report.bench());
    json.put("entries", own == null ? 0 : own.entries());
    json.put("head", own == null ? LineText.NO_HASH : own.head());
    json.put("anchors", report.anchors().stream().map(VerifyCommand::anchor).toList());
    json.put("problems", report.problems().stream().map(VerifyCommand::problem).toList());
    json.put("benches", report.ledgers().values().stream().map(VerifyCommand::ledger).toList());
    json.put("set_aside", report.setAside());
    return json;
  }

  private static Map<String, @Nullable Object> anchor(VerifyLab.Compared compared) {
    Map<String, @Nullable Object> json = compared.anchor().json();
    json.put("holds", compared.holds());
    return json;
  }

  private static Map<String, Object> problem(Finding finding) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("bench", finding.bench());
    json.put("seq", finding.seq());
    json.put("line", finding.line());
    json.put("what", finding.what());
    return json;
  }

  private static Map<String, Object> ledger(Checked checked) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("bench", checked.bench());
    json.put("entries", checked.entries());
    json.put("head", checked.head());
    json.put("torn", checked.torn());
    return json;
  }

  private static void tell(Session session, VerifyLab.Report report) {
    for (Checked checked : report.ledgers().values()) {
      session.fact(
          "bench %s: %d entries, head %s"
              .formatted(checked.bench(), checked.entries(), checked.head()));
      if (checked.torn()) {
        session.fact("  The last line was cut short while it was written. It was never confirmed.");
      }
    }
    for (VerifyLab.Compared compared : report.anchors()) {
      Anchor anchor = compared.anchor();
      session.fact(
          "%s: %s, %s%s"
              .formatted(
                  compared.holds() ? "holds" : "MISSING",
                  anchor.kind(),
                  anchor.where(),
                  anchor.seq() == 0 ? "" : ", entry " + anchor.bench() + '/' + anchor.seq()));
    }
    if (report.anchors().isEmpty()) {
      session.fact(
          "Nothing outside was compared: lines cut off the end would not show. Use --paper,"
              + " --backup or --server.");
    }
    report.setAside().forEach(name -> session.fact("set aside after a power cut: " + name));
    for (Finding finding : report.problems()) {
      session.fact(
          "PROBLEM %s line %d, entry %d: %s"
              .formatted(finding.bench(), finding.line(), finding.seq(), finding.what()));
    }
    session.fact(report.ok() ? "All is as it was written." : "NOT as it was written; see above.");
  }
}
