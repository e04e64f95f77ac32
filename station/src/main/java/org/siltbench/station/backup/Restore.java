package org.siltbench.station.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Anchor;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.ledger.Disk;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.ledger.VerifyLedger.Checked;
import org.siltbench.station.said.Words;
import org.siltbench.station.share.Exchange;
import org.siltbench.station.share.ServerAddress;

/**
 * Makes a new bench from a backup. The old bench's ledger stays as it is, as a copy beside the new
 * one, so that no second history of one bench can come about.
 */
public final class Restore {

  private Restore() {}

  /**
   * Restores into an empty folder and opens the new bench. Damage in the backup is told and what is
   * whole is taken.
   */
  public static OpenLab from(Path backup, Path folder, String name, Setting setting) {
    if (!LabFolder.exists(backup)) {
      throw new Problem.WrongUse(
          "The folder " + backup + " is no backup: it has no lab.json.",
          "Name the folder that the backup command printed.");
    }
    VerifyLab.Report report = VerifyLab.of(backup, List.of());
    report
        .problems()
        .forEach(
            problem ->
                setting
                    .notes()
                    .accept(
                        Words.verbatim(
                            "In the backup, %s line %d: %s."
                                .formatted(problem.bench(), problem.line(), problem.what()))));
    Checked old = report.own();
    if (old == null || old.seq() == 0) {
      throw new Problem.Refused(
          "The backup holds no readable entry of bench " + report.bench() + '.',
          "Nothing was changed.",
          "Try another backup, or restore from the server.");
    }
    Anchor origin = new Anchor("backup", backup.toString(), old.bench(), old.seq(), old.head(), "");
    OpenLab lab =
        LabFolder.restore(
            folder, name, practice(backup, old.bench()), origin, Optional.of(backup), setting);
    copyOwnFiles(backup, folder, setting.disk());
    return lab;
  }

  /** Makes a new bench that goes on from what the lab's server has of another. */
  public static OpenLab fromServer(
      ServerAddress address, String bench, Path folder, String name, Setting setting) {
    Anchor origin =
        Exchange.anchors(address).stream()
            .filter(anchor -> anchor.bench().equals(bench) && anchor.seq() > 0)
            .findFirst()
            .orElseThrow(
                () ->
                    new Problem.Refused(
                        "The server has nothing of bench \"" + bench + "\".",
                        "Nothing was changed.",
                        "Check the code: it stands on the bench's papers and before every ID."));
    OpenLab lab = LabFolder.restore(folder, name, false, origin, Optional.empty(), setting);
    try {
      Exchange.with(address, lab, lines -> {});
      return lab;
    } catch (RuntimeException e) {
      lab.close();
      throw e;
    }
  }

  private static boolean practice(Path backup, String bench) {
    Path ledger = backup.resolve("ledger").resolve(bench + ".jsonl");
    try (var lines = Files.lines(ledger)) {
      return lines.findFirst().orElse("").contains("\"practice\":true");
    } catch (IOException | java.io.UncheckedIOException e) {
      throw new Problem.Outside(
          "The backup cannot be read: " + e.getMessage() + ".", "", "Try another backup.", e);
    }
  }

  private static void copyOwnFiles(Path backup, Path folder, Disk disk) {
    try {
      for (String own : Backup.OWN_FILES) {
        Backup.small(backup.resolve(own), folder.resolve(own), disk);
      }
    } catch (IOException e) {
      throw new Problem.Outside(
          "The ledgers are restored; the formats, methods and media are not: "
              + e.getMessage()
              + ".",
          "The new bench can be opened.",
          "Copy these folders by hand.",
          e);
    }
  }

  /** The entry a restored bench says it goes on from. */
  public static Optional<EntryRef> origin(Entry created) {
    return created.data().get("restored_from") instanceof java.util.Map<?, ?> from
            && from.get("bench") instanceof String bench
            && from.get("seq") instanceof Long seq
        ? Optional.of(new EntryRef(bench, seq))
        : Optional.empty();
  }
}
