package org.siltbench.station.command.ledger;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.backup.Backup;
import org.siltbench.station.command.LongWork;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import picocli.CommandLine.Option;

/** {@code backup}. */
final class BackupCommand implements Task {

  @Option(
      names = "--to",
      paramLabel = "DIR",
      required = true,
      description = "a folder, perhaps on a stick; the backup becomes a new folder in it")
  @Nullable Path to;

  @Override
  public int run(Session session) {
    Path place = to;
    if (place == null) {
      throw new IllegalStateException("--to is required");
    }
    Backup.Made made =
        Backup.of(Opened.lab(session), place.toAbsolutePath(), new LongWork(session)::at);
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("folder", made.folder().toString());
    document.put("entries", made.entries());
    document.put("head", made.head());
    session.document(document);
    session.fact("backup " + made.folder());
    session.fact("%d entries, read back and whole; head %s".formatted(made.entries(), made.head()));
    session.message("The bench's key and the PINs are not in it; keep them with this computer.");
    return 0;
  }
}
