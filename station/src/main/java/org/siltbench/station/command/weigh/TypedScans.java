package org.siltbench.station.command.weigh;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.command.TypedLines;
import org.siltbench.station.work.postweigh.Ids;
import org.siltbench.station.work.scan.BagScan;

/**
 * Scans that come on the same standard input as the lines of a balance that types: a line is a scan
 * if it is a filter ID or bag code with a right check character, which no line of a balance is.
 */
final class TypedScans implements Ids, TypedLines {

  private final BlockingQueue<Answer> waiting = new LinkedBlockingQueue<>();

  @Override
  public boolean takes(String line) {
    try {
      BagScan unused = BagScan.of(line);
      return waiting.add(Answer.of(line));
    } catch (Problem.Refused notScanned) {
      return false;
    }
  }

  @Override
  public void end() {
    waiting.add(Answer.END);
  }

  @Override
  public void ask() {
    // whatever was scanned waits in its turn
  }

  @Override
  public @Nullable Answer poll() {
    return waiting.poll();
  }
}
