package org.siltbench.station.work.release;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Act;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Life;
import org.siltbench.station.life.Outcome;
import org.siltbench.station.life.Status;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.receipt.Condition;
import org.siltbench.station.work.results.BatchResults;
import org.siltbench.station.work.results.BatchResults.FilterResult;
import org.siltbench.station.work.results.ResultSheet;

/**
 * What a person weighs up before results leave the lab.
 *
 * @param sheet the results
 * @param questions what stands in the way, filter by filter
 * @param reports what was released before, newest first
 * @param released true if the newest report says what the results say now
 */
public record Readiness(
    ResultSheet sheet, List<Question> questions, List<Past> reports, boolean released) {

  /** Why a filter stands in the way. */
  public enum Kind {
    /** It came back and is not finished. */
    OPEN,
    /** Somebody holds it back. */
    HELD,
    /** A rule speaks against its result. */
    RULE
  }

  /** One filter that stands in the way. */
  public record Question(Kind kind, String filter, String sample, Words why) {}

  /** A report that left the lab. */
  public record Past(
      OffsetDateTime at,
      String report,
      String replaces,
      String analyst,
      String approver,
      String accepted) {}

  /** Looks at a batch. */
  public static Readiness of(Bench bench, MethodBook methods, String batch) {
    BatchState state = Batches.require(bench.register(), batch);
    BatchResults results = BatchResults.of(bench, methods, state);
    List<Entry> before = Release.releases(bench.register(), state.code());
    List<Past> reports = new ArrayList<>(before.stream().map(Readiness::past).toList());
    Collections.reverse(reports);
    return new Readiness(
        ResultSheet.of(bench, methods, state.code()),
        questions(results),
        reports,
        Release.released(before, results));
  }

  private static List<Question> questions(BatchResults results) {
    List<Question> out = new ArrayList<>();
    for (FilterResult row : results.rows()) {
      String id = row.state().id();
      String sample = row.note("sample");
      if (!releasable(row.state())) {
        out.add(new Question(Kind.OPEN, id, sample, row.state().status().words()));
      }
      row.state()
          .holds()
          .forEach(why -> out.add(new Question(Kind.HELD, id, sample, Condition.told(why))));
      Words against = Release.against(row);
      if (!against.isEmpty()) {
        out.add(new Question(Kind.RULE, id, sample, against));
      }
    }
    Release.open(results)
        .forEach((id, why) -> out.add(new Question(Kind.OPEN, id, "", Status.words(why))));
    return out;
  }

  private static boolean releasable(FilterState state) {
    return Life.outcome(state.status(), Act.RELEASE, state.role()) instanceof Outcome.Goes;
  }

  private static Past past(Entry entry) {
    Fields data = Fields.of(entry);
    return new Past(
        entry.at(),
        data.text("report"),
        data.text("replaces"),
        data.text("analyst"),
        data.text("approver"),
        data.text("accepted"));
  }

  /** How many questions of a kind there are. */
  public long count(Kind kind) {
    return questions.stream().filter(question -> question.kind() == kind).count();
  }
}
