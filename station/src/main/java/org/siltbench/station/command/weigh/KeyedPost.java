package org.siltbench.station.command.weigh;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.postweigh.KeyedPostWeighing;
import org.siltbench.station.work.postweigh.PostWeighReport;
import org.siltbench.station.work.postweigh.PostWeighSettings;
import org.siltbench.station.work.preweigh.KeyedMasses;
import org.siltbench.station.work.weigh.WeighEvent;

/** Masses of loaded filters typed in, one line a filter: ID MASS MASS. */
final class KeyedPost {

  private final Session session;
  private final PostWeighSettings settings;
  private final KeyedPostWeighing weighing;
  private final PostWeighLines lines;
  private final List<PostWeighReport.Done> done = new ArrayList<>();
  private final List<PostWeighReport.Refusal> refused = new ArrayList<>();

  KeyedPost(Session session, Bench bench, PostWeighSettings settings) {
    this.session = session;
    this.settings = settings;
    this.weighing = new KeyedPostWeighing(bench, session.methods(), settings);
    this.lines = new PostWeighLines(session);
  }

  int run() throws IOException {
    String stopped = "";
    for (String line = next(); line != null && stopped.isEmpty(); line = next()) {
      if (!line.isBlank() && !take(line) && !settings.goOn()) {
        stopped = "Stopped at the first refusal; what was typed after it was not read.";
        break;
      }
    }
    PostWeighReport report = new PostWeighReport(done, refused, List.of(), Words.verbatim(stopped));
    PostWeighText text = new PostWeighText(session, null);
    text.document(report, List.of());
    return text.close(report, List.of());
  }

  private @org.jspecify.annotations.Nullable String next() throws IOException {
    return session.console().readLine();
  }

  private boolean take(String line) {
    String[] words = line.strip().split("[\\s;]+");
    try {
      if (words.length != 3) {
        throw new Problem.WrongUse(
            "\"" + line.strip() + "\" is not ID MASS MASS.", "Type the mass twice, in grams.");
      }
      Optional<String> grams = KeyedMasses.twice(words[1], words[2]);
      if (grams.isEmpty()) {
        throw new Problem.Refused(
            "The two masses of " + words[0] + " differ.",
            "Nothing was recorded.",
            "Type it again.");
      }
      PostWeighReport.Done recorded = weighing.record(words[0], grams.get());
      done.add(recorded);
      lines.accept(new WeighEvent.Recorded(recorded.entry(), recorded.measured()));
      lines.recorded(recorded);
      return true;
    } catch (Problem.Refused | Problem.WrongUse e) {
      refused.add(new PostWeighReport.Refusal(words[0], String.valueOf(e.getMessage())));
      session.progress(
          "Not recorded: " + e.getMessage(), Map.of("event", "refused", "filter", words[0]));
      return false;
    }
  }
}
