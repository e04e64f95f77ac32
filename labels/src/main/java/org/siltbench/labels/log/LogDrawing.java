package org.siltbench.labels.log;

import java.io.IOException;
import org.siltbench.labels.Imprint;
import org.siltbench.labels.code.CodeGrid;
import org.siltbench.labels.code.CodeKind;
import org.siltbench.labels.code.Codes;
import org.siltbench.labels.code.Dots;
import org.siltbench.labels.draw.Cell;
import org.siltbench.labels.draw.Column;
import org.siltbench.labels.draw.Flow;
import org.siltbench.labels.draw.Paper;
import org.siltbench.labels.draw.Table;
import org.siltbench.labels.draw.Times;
import org.siltbench.labels.draw.Type;

/** Draws the log sheet. */
public final class LogDrawing {

  private static final Dots OFFICE = new Dots(300);
  private static final int CODE_DOTS = 7;
  private static final double WITH_SIGNATURES = 33;

  private LogDrawing() {}

  public static void draw(Paper paper, LogSheet log) throws IOException {
    Flow flow = Flow.sideways(paper, "Weighing log, batch " + log.batch());
    flow.title("Weighing log", log.batchName());
    flow.facts(
        4,
        "Batch",
        log.batch(),
        "Method",
        log.method(),
        "Weighings",
        Integer.toString(log.lines().size()),
        "Corrections",
        Integer.toString(log.corrections().size()));
    flow.paragraph(
        "Readings carry the digits that the balance showed. A value that was corrected is struck"
            + " through and stays readable; the correction is listed below with its reason.",
        Type.SMALL,
        flow.left(),
        flow.width());
    weighings(flow, log);
    checks(flow, log);
    overrides(flow, log);
    corrections(flow, log);
    seal(flow, paper.imprint());
    flow.signatures("weighed by, date", "checked by, date", "approved by, date");
    flow.finish();
  }

  private static void weighings(Flow flow, LogSheet log) throws IOException {
    Table table =
        Table.toRead(
            Column.left("entry", 15),
            Column.left("time", 27),
            Column.left("filter", 20),
            Column.left("status", 17),
            Column.right("zero", 15),
            Column.right("reading", 17),
            Column.left("operator", 25),
            Column.left("balance", 22),
            Column.left("room", 34),
            Column.left("balance check", 21),
            Column.left("note", 31));
    for (LogSheet.Line line : log.lines()) {
      table.row(
          Cell.of(line.entry()),
          Cell.of(Times.second(line.at())),
          corrected(line.filter(), true),
          Cell.of(line.status()),
          Cell.of(line.zero()),
          corrected(line.reading(), true),
          corrected(line.operator(), false),
          Cell.of(line.balance()),
          Cell.of(line.room()),
          Cell.of(line.check()),
          Cell.of(line.note()));
    }
    flow.heading("Weighings, in the order of the ledger").table(table);
  }

  private static Cell corrected(Entered entered, boolean bold) {
    return Cell.corrected(entered.struck(), entered.value(), bold);
  }

  private static void checks(Flow flow, LogSheet log) throws IOException {
    if (log.checks().isEmpty()) {
      return;
    }
    Table table =
        Table.toRead(
            Column.left("entry", 15),
            Column.left("time", 26),
            Column.left("check weight", 30),
            Column.left("phase", 18),
            Column.right("certified", 24),
            Column.right("reading", 24),
            Column.right("error", 20),
            Column.right("limit", 20),
            Column.left("verdict", 18));
    for (LogSheet.Check check : log.checks()) {
      table.row(
          Cell.of(check.entry()),
          Cell.of(Times.second(check.at())),
          Cell.of(check.weight()),
          Cell.of(check.phase()),
          Cell.of(check.certified()),
          Cell.strong(check.reading()),
          Cell.of(check.error()),
          Cell.of(check.limit()),
          check.pass() ? Cell.of("passed") : Cell.strong("FAILED"));
    }
    flow.heading("Balance checks").table(table);
  }

  private static void overrides(Flow flow, LogSheet log) throws IOException {
    if (log.overrides().isEmpty()) {
      return;
    }
    Table table =
        Table.toRead(
            Column.left("entry", 15),
            Column.left("time", 26),
            Column.left("balance", 30),
            Column.left("check", 20),
            Column.left("by", 22),
            Column.left("reason", 115));
    for (LogSheet.InSpite said : log.overrides()) {
      table.row(
          Cell.of(said.entry()),
          Cell.of(Times.second(said.at())),
          Cell.of(said.balance()),
          Cell.strong(said.fault()),
          Cell.of(said.by()),
          Cell.of(said.reason()));
    }
    flow.heading("Weighed on in spite of a check").table(table);
  }

  private static void corrections(Flow flow, LogSheet log) throws IOException {
    if (log.corrections().isEmpty()) {
      return;
    }
    Table table =
        Table.toRead(
            Column.left("entry", 15),
            Column.left("corrects", 15),
            Column.left("time", 26),
            Column.left("by", 22),
            Column.left("what", 70),
            Column.left("reason", 80));
    for (LogSheet.Correction correction : log.corrections()) {
      table.row(
          Cell.of(correction.entry()),
          Cell.of(correction.corrects()),
          Cell.of(Times.second(correction.at())),
          Cell.of(correction.by()),
          Cell.of(correction.what()),
          Cell.of(correction.reason()));
    }
    flow.heading("Corrections").table(table);
  }

  /** The ledger's head hash as text and as a code, so that paper pins file. */
  private static void seal(Flow flow, Imprint imprint) throws IOException {
    String head = imprint.head();
    if (head == null) {
      return;
    }
    CodeGrid grid = Codes.encode(CodeKind.DATA_MATRIX, head);
    double side = grid.columnsWithQuiet() * CODE_DOTS * OFFICE.dot();
    // Nobody should sign a page that does not say what is signed.
    flow.keep(side + WITH_SIGNATURES).heading("Ledger");
    double top = flow.y();
    Paper paper = flow.paper();
    paper.begin("Figure");
    paper.describe("Data Matrix code of the ledger's head hash " + head);
    double quiet = CODE_DOTS * OFFICE.dot();
    flow.page().code(grid, flow.left() + quiet, top + quiet, CODE_DOTS, OFFICE, 0);
    paper.end();
    double x = flow.left() + side + 4;
    double w = flow.width() - side - 4;
    flow.paragraph(
        "Head hash of the ledger of bench "
            + imprint.bench()
            + " after "
            + imprint.entries()
            + " entries:",
        Type.BODY,
        x,
        w);
    flow.paragraph(head.replaceAll("(.{8})(?=.)", "$1 "), Type.STRONG, x, w);
    flow.paragraph(
        "Whoever holds this sheet can prove that no earlier entry was changed: verify the ledger"
            + " against this hash.",
        Type.SMALL,
        x,
        w);
    flow.down(Math.max(0, top + side + 2 - flow.y()));
  }
}
