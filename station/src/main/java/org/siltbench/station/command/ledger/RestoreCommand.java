package org.siltbench.station.command.ledger;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.backup.Restore;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.share.ServerAddress;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code restore}. */
final class RestoreCommand implements Task {

  @Option(names = "--from", paramLabel = "DIR", description = "the backup's folder")
  @Nullable Path from;

  @Option(
      names = "--bench",
      paramLabel = "CODE",
      description = "with --server: the bench whose work goes on")
  @Nullable String bench;

  @Option(names = "--name", paramLabel = "NAME", description = "what people call the new bench")
  private String name = "bench";

  @Mixin ServerOptions server = new ServerOptions();

  @Override
  public int run(Session session) {
    Setting setting = session.setting();
    try (OpenLab lab = restored(session, setting)) {
      long entries = lab.ledgers().values().stream().mapToLong(position -> position.seq()).sum();
      Map<String, Object> document = new LinkedHashMap<>();
      document.put("bench", lab.code());
      document.put("folder", lab.folder().toString());
      document.put("entries", entries);
      session.document(document);
      session.fact("bench " + lab.code() + " in " + lab.folder());
      session.fact(entries + " entries are there. Register the people again; PINs do not travel.");
      return 0;
    }
  }

  private OpenLab restored(Session session, Setting setting) {
    Path folder = session.labFolder();
    if (from != null) {
      return Restore.from(from, folder, name, setting);
    }
    String old = bench;
    if (old == null) {
      throw new Problem.WrongUse(
          "Nothing is named to restore from.",
          "Give --from DIR, or --server JDBC-URL and --bench CODE.");
    }
    ServerAddress address = server.needed(session);
    return Restore.fromServer(address, old, folder, name, setting);
  }
}
