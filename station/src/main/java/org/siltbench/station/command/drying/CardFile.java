package org.siltbench.station.command.drying;

import java.nio.file.Path;
import org.siltbench.labels.Papers;
import org.siltbench.labels.cycle.CycleCard;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.work.drying.CyclePlan;
import org.siltbench.station.work.drying.DoorCard;
import org.siltbench.station.work.drying.DryStart;
import org.siltbench.station.work.paper.Imprints;
import org.siltbench.station.work.paper.PaperFile;

/** Writes the card for the oven door. */
final class CardFile {

  private CardFile() {}

  static void write(Session session, Bench bench, DryStart.Started started, Path file) {
    CyclePlan plan = CyclePlan.of(bench.register(), session.methods(), started.cycle());
    CycleCard card = DoorCard.of(bench, session.methods(), plan);
    PaperFile.write(file, to -> Papers.cycleCard(card, Imprints.of(bench), to));
    session.message("The card for the oven door is " + file + '.');
  }
}
