package org.siltbench.station.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Count;
import org.siltbench.station.bench.LedgerCopy;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.ledger.Disk;
import org.siltbench.station.ledger.Position;
import org.siltbench.station.ledger.RealDisk;

/**
 * Copies a lab's ledgers, and its own formats, methods and media, into a new folder, while weighing
 * goes on. The register is not copied, since it can be made again; the key and the PINs are not,
 * since a backup travels.
 */
public final class Backup {

  static final List<String> OWN_FILES = List.of("formats", "methods", "media");
  private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss");

  /** What was copied and read back. */
  public record Made(Path folder, long entries, String head) {}

  private Backup() {}

  /** Makes a backup in a new folder within the given one, verifies it, and remembers its head. */
  public static Made of(OpenLab lab, Path place) {
    return of(lab, place, Count.NOBODY);
  }

  /** The same, telling how far it is. */
  public static Made of(OpenLab lab, Path place, Count count) {
    String name = lab.code() + '-' + STAMP.format(OffsetDateTime.now(lab.clock()));
    Path folder = place.resolve("siltbench-" + name);
    Path part = place.resolve("siltbench-" + name + ".part");
    if (Files.exists(folder) || Files.exists(part)) {
      throw new Problem.Refused(
          "There is a backup of this second already: " + folder + '.',
          "Nothing was changed.",
          "Try again.");
    }
    try {
      Map<String, Position> ledgers = lab.ledgers();
      copy(lab.folder(), part, ledgers, count);
      VerifyLab.Report report =
          VerifyLab.of(part, List.of(), (what, lines) -> count.at("lines read back", lines));
      compare(report, ledgers);
      Files.move(part, folder, StandardCopyOption.ATOMIC_MOVE);
      return made(lab, folder, report, ledgers);
    } catch (IOException e) {
      throw new Problem.Outside(
          "The backup was not finished: " + e.getMessage() + ".",
          "The lab itself was not touched. What is in " + part + " is no backup.",
          "Check the room and the rights on that disk, then do it again.",
          e);
    }
  }

  private static void copy(Path lab, Path to, Map<String, Position> ledgers, Count count)
      throws IOException {
    Disk disk = new RealDisk();
    disk.makeFolder(to);
    disk.makeFolder(to.resolve("ledger"));
    for (Position position : ledgers.values()) {
      Path name = Path.of("ledger", position.bench() + ".jsonl");
      LedgerCopy.until(position.end(), lab.resolve(name), to.resolve(name), disk, count);
    }
    for (String own : OWN_FILES) {
      small(lab.resolve(own), to.resolve(own), disk);
    }
    disk.replace(to.resolve("lab.json"), Files.readAllBytes(lab.resolve("lab.json")));
  }

  static void small(Path from, Path to, Disk disk) throws IOException {
    List<String> names = disk.names(from);
    if (!names.isEmpty()) {
      disk.makeFolder(to);
    }
    for (String name : names) {
      disk.replace(to.resolve(name), Files.readAllBytes(from.resolve(name)));
    }
  }

  /** The copy is read back; it must reach as far as what was to be copied. */
  private static void compare(VerifyLab.Report report, Map<String, Position> ledgers)
      throws IOException {
    for (Position position : ledgers.values()) {
      var checked = report.ledgers().get(position.bench());
      boolean same = checked != null && checked.head().equals(position.sum());
      if (!same && position.seq() > 0) {
        throw new IOException("the copy of " + position.bench() + " differs when it is read back");
      }
    }
    if (!report.ok()) {
      throw new IOException("the ledger is damaged: " + report.problems().get(0).what());
    }
  }

  private static Made made(
      OpenLab lab, Path folder, VerifyLab.Report report, Map<String, Position> ledgers) {
    long entries = report.ledgers().values().stream().mapToLong(c -> c.entries()).sum();
    Position own = ledgers.getOrDefault(lab.code(), Position.start(lab.code()));
    lab.anchor("backup", folder.toString(), lab.code(), own.seq(), own.sum());
    return new Made(folder, entries, own.sum());
  }
}
