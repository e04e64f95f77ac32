package org.siltbench.station.command.correct;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.work.amend.Amend;
import org.siltbench.station.work.correct.Correction;
import picocli.CommandLine.Option;

/** {@code correct}. */
final class CorrectCommand implements Task {

  @Option(
      names = "--entry",
      required = true,
      paramLabel = "BENCH/SEQ",
      description = "the entry; the log sheet names them")
  private String entry = "";

  @Option(
      names = "--set",
      required = true,
      paramLabel = "FIELD=VALUE",
      description = "the new value; FIELD= empties it; void=true takes the whole entry back")
  private List<String> set = List.of();

  @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "why")
  private String reason = "";

  @Override
  public int run(Session session) {
    Bench bench = session.existingBench();
    EntryRef target = ref();
    Correction correction = new Correction(target, values(), reason);
    Amend amend = Amend.of(correction, session.methods());
    new ImpactText(session).tell(amend.record(bench, session.methods()));
    return 0;
  }

  private EntryRef ref() {
    try {
      return EntryRef.parse(entry.strip());
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(
          "\"" + entry + "\" names no entry.", "Write BENCH/SEQ, as the log sheet does.");
    }
  }

  private Map<String, String> values() {
    Map<String, String> out = new LinkedHashMap<>();
    for (String one : set) {
      int equals = one.indexOf('=');
      if (equals < 1) {
        throw new Problem.WrongUse("\"" + one + "\" is not FIELD=VALUE.", "Say it again.");
      }
      String field = one.substring(0, equals).strip();
      if (out.put(field, one.substring(equals + 1).strip()) != null) {
        throw new Problem.WrongUse("The field " + field + " is set twice.", "Set it once.");
      }
    }
    return out;
  }
}
