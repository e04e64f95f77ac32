package org.siltbench.station.command.prepare;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.life.Role;
import org.siltbench.station.work.batch.NewBatch;
import picocli.CommandLine.Option;

/** {@code batch new}. */
final class BatchNew implements Task {

  @Option(names = "--name", required = true, paramLabel = "NAME", description = "its name")
  private String name = "";

  @Option(names = "--lot", required = true, paramLabel = "NAME", description = "the maker's lot")
  private String lot = "";

  @Option(names = "--method", required = true, paramLabel = "KEY", description = "the method")
  private String method = "";

  @Option(
      names = "--count",
      required = true,
      paramLabel = "N",
      description = "filters in all; those not given a role below are for samples")
  private int count;

  @Option(names = "--field-blanks", paramLabel = "N", description = "of them field blanks")
  private int fieldBlanks;

  @Option(names = "--trip-blanks", paramLabel = "N", description = "of them trip blanks")
  private int tripBlanks;

  @Option(names = "--method-blanks", paramLabel = "N", description = "of them method blanks")
  private int methodBlanks;

  @Option(names = "--controls", paramLabel = "N", description = "of them control filters")
  private int controls;

  @Option(names = "--references", paramLabel = "N", description = "of them reference samples")
  private int references;

  @Option(names = "--spares", paramLabel = "N", description = "of them spares")
  private int spares;

  @Option(
      names = "--duplicates",
      paramLabel = "N",
      description = "of those for samples, the second of a pair; labels and field sheet say so")
  private int duplicates;

  @Override
  public int run(Session session) {
    NewBatch wanted = new NewBatch(name, lot, method, count, roles(), duplicates);
    session.methods().get(method);
    Bench bench = session.bench();
    NewBatch.Made made = wanted.record(bench, session.methods());
    Map<String, Object> document = new LinkedHashMap<>(BatchText.document(bench, made.batch()));
    session.document(document);
    BatchText.print(session, bench, made.batch());
    if (made.newLot()) {
      session.message(
          "Lot "
              + lot
              + " is new here and known by name only; describe it with siltbench lot new.");
    }
    return 0;
  }

  private Map<Role, Integer> roles() {
    Map<Role, Integer> roles = new EnumMap<>(Role.class);
    roles.put(Role.FIELD_BLANK, fieldBlanks);
    roles.put(Role.TRIP_BLANK, tripBlanks);
    roles.put(Role.METHOD_BLANK, methodBlanks);
    roles.put(Role.CONTROL, controls);
    roles.put(Role.REFERENCE, references);
    roles.put(Role.SPARE, spares);
    return roles;
  }
}
